using System.Collections.Immutable;
using System.Text;
using BendSheet.Core.Bench;
using BendSheet.Core.Car;
using BendSheet.Core.Findings;
using BendSheet.Core.Sheet;
using BendSheet.Files.Reading;
using BendSheet.Pdf;
using BendSheet.Sheets.Drawing;
using BendSheet.Sheets.FullSize;
using UglyToad.PdfPig;
using UglyToad.PdfPig.Content;

namespace BendSheet.Sheets.Tests;

/// <summary>Sheets printed from typed files, and read back by an independent reader.</summary>
internal static class Printed
{
    /// <summary>The head of a file; a line's rows come below it.</summary>
    public const string Head = """
        project: Finch
        units: mm
        tube: {od: 3/16 in, wall: 0.028 in, material: copper-nickel}
        bender: {radius: 9/16 in}
        fittings:
          an3: {flare: single 37, takes: 0.5, slide-on: [{nut: 17}, {sleeve: 9}], straight: 35}
        wanted: {miss: 1 m, askew: 90}
        lines:

        """;

    /// <summary>The worked example of the project's conventions.</summary>
    public const string WorkedExample = Head + """
          front-left:
            from: {at: master cylinder, fitting: an3}
            to: {at: hose bracket, fitting: an3}
            rows:
              - {straight: 120, bend: 45, note: mind the column}
              - {straight: 60, rotate: 90 cw, bend: 30}
              - {straight: 200, rotate: 45 ccw, bend: 90}
              - {straight: 80}
        """;

    /// <summary>A line with a fitting at both ends, a note, and bends in different planes, as they are found on a car.</summary>
    public static string FewBends(int count) =>
        Head + "  few:\n    from: {at: master cylinder, fitting: an3}\n    to: {at: hose bracket, fitting: an3}\n    rows:\n"
        + string.Concat(new[]
        {
            "      - {straight: 120, bend: 45}\n",
            "      - {straight: 160, rotate: 90 cw, bend: 30, note: clears the steering column}\n",
            "      - {straight: 200, rotate: 45 ccw, bend: 90}\n",
            "      - {straight: 140, rotate: 120 cw, bend: 60}\n",
            "      - {straight: 180, rotate: 180, bend: 45}\n",
        }.Take(count))
        + "      - {straight: 80}\n";

    /// <summary>A coil between two bends.</summary>
    public const string Coiled = Head + """
          coiled:
            from: {at: tee, fitting: an3}
            rows:
              - {straight: 150, bend: 90, note: beside the frame}
              - {straight: 80, coil: 3, radius: 25, pitch: 8}
              - {straight: 200, bend: 45}
              - {straight: 100}
        """;

    /// <summary>The content of each line's sheet with its step pages.</summary>
    public static ImmutableArray<SheetContent> WithSteps(string yaml) =>
        [.. Contents(yaml).Zip(Solved(yaml), (sheet, line) => sheet with { Steps = StepWriter.Of(line, sheet.Notation) })];

    /// <summary>The solved lines of a file without mistakes.</summary>
    public static ImmutableArray<SolvedLine> Solved(string yaml)
    {
        var file = Sound(yaml);
        return [.. file.Lines.Select(CarPlan.Line)];
    }

    /// <summary>The content of each line's sheet.</summary>
    public static ImmutableArray<SheetContent> Contents(string yaml)
    {
        var file = Sound(yaml);
        return [.. file.Lines.Select(line => SheetWriter.Of(CarPlan.Line(line), file.Project, file.Notation))];
    }

    /// <summary>What was typed, with nothing to say of it but that a tube is thicker than a brake line: pages hold those too.</summary>
    private static TemplateFile Sound(string yaml)
    {
        var file = TemplateReader.Read("typed.yaml", new MemoryStream(Encoding.UTF8.GetBytes(yaml)));
        Assert.DoesNotContain(file.Findings, finding =>
            finding.Severity is Severity.Error or Severity.Warning && finding.Rule != FileRules.UnusualTube);
        return file;
    }

    /// <summary>The content of each line's sheet, whatever is to be said of the line.</summary>
    public static ImmutableArray<SheetContent> AnyContents(string yaml)
    {
        var file = TemplateReader.Read("typed.yaml", new MemoryStream(Encoding.UTF8.GetBytes(yaml)));
        return [.. CarPlan.Of(file, []).Lines.Where(line => line.Plan is not null)
            .Select(line => SheetWriter.Of(line, file.Project, file.Notation))];
    }

    /// <summary>The file as PDF.</summary>
    public static PrintedSheets Sheets(string yaml, Paper paper = Paper.A4, FullSizePages fullSize = FullSizePages.None) =>
        Sheets(Contents(yaml), paper, fullSize);

    /// <summary>Sheets as PDF, without a cover.</summary>
    public static PrintedSheets Sheets(
        ImmutableArray<SheetContent> lines, Paper paper = Paper.A4, FullSizePages fullSize = FullSizePages.None) =>
        Of(new(lines, paper) { Title = lines[0].Project, FullSize = fullSize });

    /// <summary>What was asked for, as PDF.</summary>
    public static PrintedSheets Of(PrintJob job) => PrintedSheets.Of(job, new PdfPress());

    /// <summary>A PDF of one A4 page with whatever is drawn on it.</summary>
    public static byte[] OnCanvas(Action<Canvas> draw)
    {
        var press = new PdfPress();
        var part = press.Draw("Test", [new(PaperSize.A4, null, page => draw(new Canvas(page, 10, 190)))], mirrored: false);
        return press.Bind([part], "Test").ToArray();
    }

    /// <summary>The pages of a PDF.</summary>
    public static IReadOnlyList<Page> Pages(PrintedSheets printed)
    {
        // The pages stay readable as long as their document is not disposed of; the test's end does that.
        var document = PdfDocument.Open(printed.Pdf.ToArray());
        return [.. document.GetPages()];
    }

    /// <summary>All letters in the order in which they were drawn, without blanks.</summary>
    public static string Text(IEnumerable<Page> pages) =>
        WithoutBlanks(string.Concat(pages.SelectMany(page => page.Letters).Select(letter => letter.Value)));

    /// <summary>A text as <see cref="Text"/> gives it.</summary>
    public static string WithoutBlanks(string text) => string.Concat(text.Where(character => !char.IsWhiteSpace(character)));

    /// <summary>Rows of a line with many bends.</summary>
    public static string ManyBends(int count) => Head + "  many:\n"
        + string.Concat(
            Enumerable.Range(0, count)
                .Select(
                    i => FormattableString.Invariant(
                        $"    - {{straight: {60 + (i % 7)}, rotate: {(i * 37 % 340) - 170}, bend: {30 + (i % 4 * 15)}}}\n")))
        + "    - {straight: 50}\n";

    /// <summary>Letters that lie over one another.</summary>
    public static List<string> Overlaps(List<Letter> letters)
    {
        var overlaps = new List<string>();
        for (var i = 0; i < letters.Count; i++)
        {
            for (var j = i + 1; j < letters.Count; j++)
            {
                var a = letters[i].BoundingBox;
                var b = letters[j].BoundingBox;
                var width = Math.Min(a.Right, b.Right) - Math.Max(a.Left, b.Left);
                var height = Math.Min(a.Top, b.Top) - Math.Max(a.Bottom, b.Bottom);
                if (width > 0.4 && height > 0.4)
                {
                    overlaps.Add($"{letters[i].Value} and {letters[j].Value} at {a.Left:F1}, {a.Bottom:F1}");
                }
            }
        }

        return overlaps;
    }
}
