namespace BendSheet.Sheets.Fonts;

/// <summary>
/// The TrueType files of Inter 3.019 that sheets are set in (SIL Open Font License 1.1, beside them), as resources of this assembly.
/// </summary>
internal static class InterFace
{
    /// <summary>Body text.</summary>
    public const string Regular = "Inter-Regular.ttf";

    /// <summary>What is printed as bold: Inter's Bold runs together on a photocopy, SemiBold does not.</summary>
    public const string SemiBold = "Inter-SemiBold.ttf";

    /// <summary>A fresh copy of one file.</summary>
    /// <exception cref="InvalidDataException">It is not embedded: a defect of the build.</exception>
    public static byte[] Read(string face)
    {
        using var resource = typeof(InterFace).Assembly.GetManifestResourceStream(face)
            ?? throw new InvalidDataException($"{face} is not embedded.");
        var file = new byte[resource.Length];
        resource.ReadExactly(file);
        return file;
    }
}
