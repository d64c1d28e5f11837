using System.Text;
using System.Text.Unicode;
using BendSheet.Core.Findings;

namespace BendSheet.Files.Yaml;

/// <summary>From the bytes of a file to its text: strict UTF-8, with or without a byte order mark.</summary>
internal static class FileText
{
    /// <summary>How much of the start is looked at to tell a picture or a program from a text.</summary>
    private const int Sample = 1024;

    /// <summary>The text, without its byte order mark. With a finding, the text is only good for showing the place.</summary>
    public static (SourceLines Source, Finding? Finding) Decode(string fileName, ReadOnlySpan<byte> bytes, int fileNumber)
    {
        var nothing = new SourceLines(fileName, "", fileNumber);
        if (IsUtf16(bytes))
        {
            return (nothing, YamlRules.NotUtf8
                .Error(nothing.At(1, 1), "this file is saved as UTF-16 (\"Unicode\"): save it again as UTF-8"));
        }

        if (IsNoText(bytes))
        {
            return (nothing, YamlRules.NotText.Error(nothing.At(1, 1),
                "this is not a text file: give the file in which the lines of tube are typed, a plain text saved as UTF-8"));
        }

        if (bytes.StartsWith(Encoding.UTF8.Preamble))
        {
            bytes = bytes[Encoding.UTF8.Preamble.Length..];
        }

        if (Utf8.IsValid(bytes))
        {
            return (new SourceLines(fileName, Encoding.UTF8.GetString(bytes), fileNumber), null);
        }

        Utf8.ToUtf16(bytes, new char[bytes.Length], out _, out var written, replaceInvalidSequences: false);
        var shown = new SourceLines(fileName, Encoding.UTF8.GetString(bytes), fileNumber);
        return (shown, YamlRules.NotUtf8.Error(shown.AtOffset(written),
            "this character is not UTF-8, so the file was saved in another encoding: save it again as UTF-8"));
    }

    private static bool IsUtf16(ReadOnlySpan<byte> bytes) =>
        bytes.StartsWith<byte>([0xFF, 0xFE]) || bytes.StartsWith<byte>([0xFE, 0xFF])
        || bytes is [not 0, 0, not 0, 0, ..] or [0, not 0, 0, not 0, ..];

    /// <summary>
    /// More than one character in twenty is a control character, or a NUL stands in something that is not UTF-8, or it is a PDF.
    /// </summary>
    private static bool IsNoText(ReadOnlySpan<byte> bytes)
    {
        var sample = bytes[..Math.Min(bytes.Length, Sample)];
        var controls = 0;
        foreach (var b in sample)
        {
            controls += b is < 0x20 and not (byte)'\t' and not (byte)'\n' and not (byte)'\r' or 0x7F ? 1 : 0;
        }

        return controls > 1 && controls * 20 > sample.Length
            || bytes.StartsWith("%PDF-"u8)
            || (sample.Contains((byte)0) && !Utf8.IsValid(bytes));
    }
}
