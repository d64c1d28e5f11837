using BendSheet.Core.Sheet;
using UglyToad.PdfPig;
using UglyToad.PdfPig.Graphics.Operations.MarkedContent;
using UglyToad.PdfPig.Graphics.Operations.TextObjects;
using UglyToad.PdfPig.Tokens;

namespace BendSheet.Sheets.Tests;

/// <summary>What somebody gets who has the sheets read out, or reads them in a program that goes by their structure.</summary>
public class ReadingOrderTests
{
    private const string TwoLines = Printed.WorkedExample + "\n  second:\n    - {straight: 100, bend: 20}\n    - {straight: 100}\n";

    [Fact]
    public void Every_line_is_a_section_that_begins_with_its_name() => Assert.Equal(
        ["front-left", "second"],
        Read(TwoLines).Parts.Select(section => section is { Type: "Sect", Parts: [{ Type: "H1" } name, ..] } ? name.Words : section.Type),
        StringComparer.Ordinal);

    [Fact]
    public void The_parts_of_a_sheet_come_in_the_order_of_work()
    {
        var content = Printed.Contents(Printed.WorkedExample)[0];
        var sheet = Read(Printed.WorkedExample).Parts[0];
        var parts = sheet.Parts.Select(part => part.Type);
        Assert.Equal(
            "H1 P P P P P P H2 L H2 Figure Table P H2 Figure Figure Figure Figure H2 L H2 L P H2 L",
            string.Join(' ', parts));
        var lists = sheet.Parts.Where(part => part.Type is "L").ToList();
        Assert.All(
            new[]
            {
                content.ReadFirst,
                content.Order,
                [.. content.Checks.Select(check => $"{check.Name}: {check.Figure}")],
                [.. Cautions.All],
            }.Zip(lists),
            pair => Assert.Equal(
                pair.First.Select(Printed.WithoutBlanks), pair.Second.Parts.Select(item => item.Words), StringComparer.Ordinal));
        Assert.All(lists.SelectMany(list => list.Parts), item => Assert.True(item is { Type: "LI", Parts: [{ Type: "LBody" }] }));
    }

    [Fact]
    public void The_table_has_head_cells_for_its_columns_and_rows_and_every_row_has_all_cells()
    {
        var rows = Printed.Contents(Printed.WorkedExample)[0].Rows;
        var table = Read(Printed.WorkedExample).Parts[0].Parts.Single(part => part.Type is "Table");
        Assert.Equal(rows.Length + 1, table.Parts.Count);
        Assert.All(table.Parts, row => Assert.Equal(13, row.Parts.Count));
        Assert.All(table.Parts[0].Parts, cell => Assert.True(cell is { Type: "TH", Scope: "Column" }));
        Assert.All(rows.Zip(table.Parts.Skip(1)), pair =>
        {
            Assert.Equal("TH", Assert.Single(pair.Second.Parts, cell => cell.Scope is "Row").Type);
            Assert.Equal(FormattableString.Invariant($"{pair.First.Number}"), pair.Second.Parts[1].Words);
            Assert.Equal(Printed.WithoutBlanks(pair.First.Mark + pair.First.MarkOther), pair.Second.Parts[2].Words);
            Assert.Equal(Printed.WithoutBlanks(pair.First.Bend), pair.Second.Parts[7].Words);
        });
    }

    [Fact]
    public void A_table_and_a_list_that_go_on_over_pages_are_one_and_their_heads_are_read_once()
    {
        var yaml = Printed.ManyBends(60);
        var content = Printed.Contents(yaml)[0];
        var sheet = Read(yaml).Parts[0];
        var table = sheet.Parts.Single(part => part.Type is "Table");

        Assert.Equal(1 + content.Rows.Length + content.Rows.Count(row => row.TurnRound is not null), table.Parts.Count);
        Assert.Single(table.Parts, row => row.Parts.Any(cell => cell.Scope is "Column"));
        Assert.Equal(4, sheet.Parts.Count(part => part.Type is "L"));
        Assert.DoesNotContain("continued", sheet.Words, StringComparison.Ordinal);
        Assert.DoesNotContain("page1of", sheet.Words, StringComparison.Ordinal);
    }

    [Fact]
    public void A_figure_says_in_words_what_it_shows()
    {
        var content = Printed.Contents(Printed.WorkedExample)[0];
        var figures = Read(Printed.WorkedExample).All.Where(part => part.Type is "Figure").Select(figure => figure.Alternative!).ToList();
        Assert.Equal(5, figures.Count);
        Assert.Equal(DrawingWords.OfStrip(content), figures[0]);
        Assert.Equal(DrawingWords.OfShape(content, "pictorial view"), figures[1]);
        Assert.All(figures.Skip(2), view => Assert.Contains(content.Envelope, view, StringComparison.Ordinal));
    }

    [Theory]
    [MemberData(nameof(PrintedSheetsTests.Demanding), MemberType = typeof(PrintedSheetsTests))]
    public void All_text_is_read_out_once_or_is_furniture_of_the_page(string yaml, Paper paper)
    {
        using var document = PdfDocument.Open(Printed.Sheets(yaml, paper).Pdf.ToArray());
        var read = ReadOut.Of(document).All.Sum(part => Printed.WithoutBlanks(part.Text).Length);
        var marked = document.GetPages().SelectMany(page => page.GetMarkedContents()).ToList();
        var furniture = marked.Where(content => content.IsArtifact)
            .Sum(content => Printed.WithoutBlanks(string.Concat(content.Letters.Select(letter => letter.Value))).Length);
        Assert.Equal(Printed.Text(document.GetPages()).Length, read + furniture);
        Assert.InRange(furniture, document.NumberOfPages * "page1of1".Length, read);
    }

    /// <summary>ISO 32000-1, 14.6.1: marked content lies inside a text object or around it, never across its ends.</summary>
    [Theory]
    [MemberData(nameof(PrintedSheetsTests.Demanding), MemberType = typeof(PrintedSheetsTests))]
    public void Marked_content_and_text_objects_do_not_cross(string yaml, Paper paper)
    {
        using var document = PdfDocument.Open(Printed.Sheets(yaml, paper).Pdf.ToArray());
        Assert.All(document.GetPages(), page =>
        {
            var open = new Stack<char>();
            foreach (var operation in page.Operations)
            {
                switch (operation)
                {
                    case BeginText:
                        open.Push('T');
                        break;
                    case BeginMarkedContent or BeginMarkedContentWithProperties:
                        open.Push('M');
                        break;
                    case EndText:
                        Assert.Equal('T', open.Pop());
                        break;
                    case EndMarkedContent:
                        Assert.Equal('M', open.Pop());
                        break;
                    default:
                        break;
                }
            }

            Assert.Empty(open);
        });
    }

    [Fact]
    public void The_document_says_its_language_and_title_and_no_author_and_claims_no_conformance()
    {
        var pdf = Printed.Sheets(Printed.WorkedExample).Pdf.ToArray();
        using var document = PdfDocument.Open(pdf);
        var catalog = document.Structure.Catalog.CatalogDictionary;
        Assert.Equal("en", ((StringToken)catalog.Data["Lang"]).Data);
        Assert.Equal("Finch", document.Information.Title);
        Assert.Null(document.Information.Author);
        var text = System.Text.Encoding.Latin1.GetString(pdf);
        Assert.Contains("/Marked true", text, StringComparison.Ordinal);
        Assert.Contains("/DisplayDocTitle true", text, StringComparison.Ordinal);
        Assert.DoesNotContain("pdfuaid", text, StringComparison.Ordinal);
        Assert.DoesNotContain("pdfaid", text, StringComparison.Ordinal);
    }

    [Theory]
    [MemberData(nameof(PrintedSheetsTests.Demanding), MemberType = typeof(PrintedSheetsTests))]
    public void A_page_takes_at_most_sixty_kilobytes_and_the_fonts_as_much_again(string yaml, Paper paper)
    {
        const int Kilobyte = 1024;
        var printed = Printed.Sheets(yaml, paper);
        Assert.InRange(printed.Pdf.Length, 1, 60 * Kilobyte * (printed.Pages + 1));
    }

    private static ReadOut Read(string yaml)
    {
        using var document = PdfDocument.Open(Printed.Sheets(yaml).Pdf.ToArray());
        return ReadOut.Of(document);
    }
}
