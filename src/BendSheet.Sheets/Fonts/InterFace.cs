using System.Text;

namespace BendSheet.Sheets.Fonts;

/// <summary>
/// The TrueType files of Inter, as they lie in an assembly that is itself a resource of this one. That assembly is only
/// read, never loaded: the way to its single manifest resource goes through the PE headers (ECMA-335, II.25), and the
/// resource is an index of names, offsets and sizes followed by the files.
/// </summary>
internal static class InterFace
{
    /// <summary>Body text.</summary>
    public const string Regular = "Inter-Regular";

    /// <summary>What is printed as bold: Inter's Bold runs together on a photocopy, SemiBold does not.</summary>
    public const string SemiBold = "Inter-SemiBold";

    private const int PE32Plus = 0x20B;
    private const int SectionHeaderSize = 40;

    /// <summary>A fresh copy of one TrueType file; nothing else is read.</summary>
    /// <exception cref="InvalidDataException">The font is not in the package: it was built with another version.</exception>
    public static byte[] Read(string face)
    {
        using var assembly = typeof(InterFace).Assembly.GetManifestResourceStream("inter.dll")
            ?? throw new InvalidDataException("The font assembly is not embedded.");
        using var reader = new BinaryReader(assembly, Encoding.UTF8);

        assembly.Position = ManifestResources(reader) + sizeof(int);
        var indexLength = reader.ReadInt32();
        var filesStart = assembly.Position + indexLength;
        _ = reader.ReadInt32(); // version of the index
        for (var entries = reader.ReadInt32(); entries > 0; entries--)
        {
            var name = reader.ReadString();
            var offset = reader.ReadInt32();
            var size = reader.ReadInt32();
            if (name.AsSpan(name.LastIndexOf('/') + 1).SequenceEqual(face + ".ttf"))
            {
                assembly.Position = filesStart + offset;
                return reader.ReadBytes(size);
            }
        }

        throw new InvalidDataException($"There is no {face} in the font assembly.");
    }

    /// <summary>Where in the file the CLI header's resources begin.</summary>
    private static long ManifestResources(BinaryReader reader)
    {
        var signature = reader.UInt32At(0x3C);
        var sectionCount = reader.UInt16At(signature + 6);
        var optionalHeaderSize = reader.UInt16At(signature + 20);
        var optionalHeader = signature + 24;
        var directories = optionalHeader + (reader.UInt16At(optionalHeader) == PE32Plus ? 112u : 96u);
        var sections = optionalHeader + optionalHeaderSize;

        var cliHeader = FileOffset(reader.UInt32At(directories + (14 * 8)));
        return FileOffset(reader.UInt32At(cliHeader + 24));

        long FileOffset(uint virtualAddress)
        {
            for (var header = sections; header < sections + (sectionCount * SectionHeaderSize); header += SectionHeaderSize)
            {
                var start = reader.UInt32At(header + 12);
                var size = reader.UInt32At(header + 16);
                if (virtualAddress >= start && virtualAddress - start < size)
                {
                    return virtualAddress - start + reader.UInt32At(header + 20);
                }
            }

            throw new InvalidDataException("The font assembly has no resources.");
        }
    }

    private static uint UInt32At(this BinaryReader reader, long position)
    {
        reader.BaseStream.Position = position;
        return reader.ReadUInt32();
    }

    private static ushort UInt16At(this BinaryReader reader, long position)
    {
        reader.BaseStream.Position = position;
        return reader.ReadUInt16();
    }
}
