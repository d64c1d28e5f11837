namespace BendSheet.Sheets.Pdf;

/// <summary>Operators that were written into a page as comments, because PDFsharp has no other way to write them.</summary>
internal static class MarkedOperators
{
    /// <summary>Behind the sign of a comment and a blank; no other comment begins so, and texts are written in hexadecimal.</summary>
    public const string Sign = "~";

    private static ReadOnlySpan<byte> Comment => "% ~"u8;

    /// <summary>The content of a page with its operators.</summary>
    public static ReadOnlySpan<byte> Of(ReadOnlySpan<byte> content)
    {
        if (content.IndexOf(Comment) < 0)
        {
            return content;
        }

        var made = new byte[content.Length];
        var length = 0;
        for (var at = content.IndexOf(Comment); at >= 0; at = content.IndexOf(Comment))
        {
            content[..at].CopyTo(made.AsSpan(length));
            length += at;
            content = content[(at + Comment.Length)..];
        }

        content.CopyTo(made.AsSpan(length));
        return made.AsSpan(0, length + content.Length);
    }
}
