using BendSheet.Core.Findings;

namespace BendSheet.Files.Yaml;

/// <summary>
/// Reads a typed file into a tree of texts, lists and maps that know where they stand. Whatever the bytes are, the answer is a
/// <see cref="YamlReading"/>: what cannot be read is a finding. Only the plain part of YAML is taken, the part that a person types at the
/// bench: no anchors, aliases, tags, directives or second documents.
/// </summary>
public static class YamlDocument
{
    /// <summary>Larger files are not looked at: 4 MiB is some 60,000 rows.</summary>
    public const int MostBytes = 4 * 1024 * 1024;

    /// <summary>Lists and maps inside one another.</summary>
    public const int DeepestNesting = 32;

    /// <summary>Texts, lists and maps in one file.</summary>
    public const int MostValues = 400_000;

    /// <summary>Reading stops after this many mistakes.</summary>
    public const int MostFindings = 100;

    /// <summary>
    /// Reads at most <see cref="MostBytes"/> and one byte. What the stream throws (a disk that does not answer) passes through.
    /// </summary>
    /// <param name="fileName">As the findings shall name it.</param>
    /// <param name="content">Read from where it stands; not closed.</param>
    public static YamlReading Read(string fileName, Stream content)
    {
        ArgumentNullException.ThrowIfNull(content);
        var buffer = new byte[64 * 1024];
        using var bytes = new MemoryStream();
        while (bytes.Length <= MostBytes)
        {
            var count = content.Read(buffer, 0, (int)Math.Min(buffer.Length, MostBytes + 1 - bytes.Length));
            if (count == 0)
            {
                break;
            }

            bytes.Write(buffer, 0, count);
        }

        return Read(fileName, bytes.GetBuffer().AsMemory(0, (int)bytes.Length));
    }

    /// <summary>Reads the bytes of a file.</summary>
    /// <param name="fileName">As the findings shall name it.</param>
    /// <param name="content">The whole file, with or without a byte order mark.</param>
    public static YamlReading Read(string fileName, ReadOnlyMemory<byte> content)
    {
        if (content.Length > MostBytes)
        {
            var nothing = new SourceLines(fileName, "");
            return new YamlReading(null, nothing, [YamlRules.FileTooLarge.Error(nothing.At(1, 1),
                "this file is larger than 4 MiB, far more than anybody types: give the file in which the lines of tube are typed")]);
        }

        var (source, undecoded) = FileText.Decode(fileName, content.Span);
        if (undecoded is not null)
        {
            return new YamlReading(null, source, [undecoded]);
        }

        var findings = new List<Finding>();
        var root = LineScan.Clean(source, findings) is { } text ? new YamlTree(source, findings).Build(text) : null;
        return new YamlReading(root, source, [.. findings.InFileOrder()]);
    }
}
