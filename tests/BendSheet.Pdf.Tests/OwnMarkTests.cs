using PdfSharp.Pdf;

namespace BendSheet.Pdf.Tests;

public class OwnMarkTests
{
    private static byte[] Made()
    {
        using var document = new PdfDocument();
        document.AddPage();
        return FinishedPdf.Of(document, "one page");
    }

    [Fact]
    public void A_file_of_this_program_is_known_by_its_beginning_and_is_untouched()
    {
        var file = Made();
        Assert.True(OwnMark.IsOn(file.AsSpan(0, OwnMark.Length)));
        Assert.True(OwnMark.IsUntouched(file));
    }

    [Fact]
    public void A_file_that_was_changed_anywhere_or_added_to_is_not_untouched()
    {
        var file = Made();
        for (var at = 5; at < file.Length; at += 7)
        {
            var changed = file.ToArray();
            changed[at] ^= 1;

            // What follows the identifier says nothing that a person could have put there.
            var isBehind = at > file.AsSpan().LastIndexOf("trailer"u8);
            Assert.True(isBehind || !OwnMark.IsUntouched(changed), $"byte {at}");
        }

        Assert.False(OwnMark.IsUntouched([.. file, .. "%%EOF\n"u8]));
        Assert.False(OwnMark.IsUntouched(file.AsSpan(..^1)));
        Assert.False(OwnMark.IsUntouched([.. file, .. "1 0 obj\n<<>>\nendobj\ntrailer\n<</Prev 1>>\nstartxref\n1\n%%EOF\n"u8]));
    }

    [Theory]
    [InlineData("")]
    [InlineData("%PDF-1.7\n1 0 obj\n<</Creator(BendSheet)>>\n")]
    [InlineData("% A sheet of BendSheet: printed again, it is replaced\n")]
    public void Other_files_have_no_mark(string text)
    {
        var file = System.Text.Encoding.UTF8.GetBytes(text);
        Assert.False(OwnMark.IsOn(file));
        Assert.False(OwnMark.IsUntouched(file));
    }
}
