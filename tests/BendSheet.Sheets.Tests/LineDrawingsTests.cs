using System.Globalization;
using System.Text;
using System.Xml.Linq;
using BendSheet.Sheets.Drawing;
using BendSheet.Sheets.Elements;
using UglyToad.PdfPig.Core;

namespace BendSheet.Sheets.Tests;

public class LineDrawingsTests
{
    private static readonly XNamespace Svg = "http://www.w3.org/2000/svg";

    [Fact]
    public void Each_drawing_is_alone_with_a_title_and_a_description_in_millimetres()
    {
        var drawings = LineDrawings.Of(Printed.Contents(Printed.WorkedExample)[0]).Drawings;
        Assert.Equal(["strip", "pictorial", "top", "side", "end"], drawings.Select(drawing => drawing.Name), StringComparer.Ordinal);
        Assert.All(drawings, drawing =>
        {
            var root = Read(drawing).Root!;
            Assert.Equal(Svg + "svg", root.Name);
            Assert.Equal($"front-left: {drawing.Name}", root.Element(Svg + "title")!.Value);
            Assert.Contains("3 bends, cut length 454.0 mm", root.Element(Svg + "desc")!.Value, StringComparison.Ordinal);
            var box = root.Attribute("viewBox")!.Value.Split(' ');
            Assert.Equal(box[2] + "mm", root.Attribute("width")!.Value);
            Assert.Equal(box[3] + "mm", root.Attribute("height")!.Value);
        });
    }

    [Fact]
    public void Texts_are_texts_and_every_number_is_there()
    {
        var sheet = Printed.Contents(Printed.ManyBends(60))[0];
        var strip = Texts(LineDrawings.Of(sheet).Drawings[0]);
        Assert.All(sheet.Strip.Bends, bend =>
        {
            Assert.Contains(FormattableString.Invariant($"{bend.Number}"), strip, StringComparer.Ordinal);
            Assert.Contains(bend.Label, strip, StringComparer.Ordinal);
            Assert.Contains(bend.LineClock, strip, StringComparer.Ordinal);
        });
    }

    [Fact]
    public void A_clip_at_the_mark_of_a_bend_is_drawn_over_it_white_around_and_black_inside()
    {
        var sheet = Printed.Contents(Printed.WorkedExample)[0];
        var clipped = sheet with { Strip = sheet.Strip with { Clips = [sheet.Strip.Bends[0].Mark] } };
        var drawn = Encoding.UTF8.GetString(LineDrawings.Of(clipped).Drawings[0].Svg.Span);
        const string Thick = "stroke-width=\"0.6\"";
        var white = drawn.LastIndexOf("stroke=\"white\"", StringComparison.Ordinal);
        Assert.InRange(drawn.IndexOf(Thick, StringComparison.Ordinal), 0, white);
        Assert.InRange(drawn.LastIndexOf(Thick, StringComparison.Ordinal), white, drawn.Length);
    }

    [Fact]
    public void Whatever_is_typed_stays_readable_as_xml()
    {
        var drawn = LineDrawings.Of(Printed.Contents(Printed.WorkedExample)[0] with { Line = "a <b> & 'c' 管" });
        Assert.Equal(["管 (U+7BA1)"], drawn.MissingCharacters, StringComparer.Ordinal);
        Assert.All(
            drawn.Drawings,
            drawing => Assert.StartsWith("a <b> & 'c' □: ", Read(drawing).Root!.Element(Svg + "title")!.Value, StringComparison.Ordinal));
    }

    [Fact]
    public void The_same_line_gives_the_same_bytes()
    {
        var sheet = Printed.Contents(Printed.WorkedExample)[0];
        Assert.All(
            LineDrawings.Of(sheet).Drawings
                .Zip(LineDrawings.Of(sheet).Drawings), pair => Assert.Equal(pair.First.Svg.ToArray(), pair.Second.Svg.ToArray()));
    }

    [Theory]
    [InlineData(3)]
    [InlineData(60)]
    public void What_is_drawn_in_an_svg_is_what_is_drawn_on_a_page(int bends)
    {
        var sheet = Printed.Contents(Printed.ManyBends(bends))[0];
        var measure = new TextMeasure();
        var blocks = StripDrawing.Of(sheet, measure, 190).ToList();
        var ink = new SvgPage();
        Draw(new Canvas(ink, 10, 190));
        using var pdf = UglyToad.PdfPig.PdfDocument.Open(Printed.OnCanvas(Draw));
        var page = pdf.GetPage(1);
        var onPage = page.Paths.Where(path => path.IsStroked).SelectMany(path => path).SelectMany(path => path.Commands)
            .OfType<PdfSubpath.Line>()
            .Select(line => (line.From.X / (72 / 25.4), (page.Height - line.From.Y) / (72 / 25.4))).ToList();
        var inSvg = XDocument.Parse($"<svg xmlns=\"{Svg}\">{ink.Elements}</svg>").Descendants(Svg + "path")
            .Select(path => path.Attribute("d")!.Value.Split(['M', 'L'], StringSplitOptions.RemoveEmptyEntries)[0].Split(' '))
            .Select(at => (X: double.Parse(at[0], CultureInfo.InvariantCulture), Y: double.Parse(at[1], CultureInfo.InvariantCulture)))
            .ToList();
        Assert.NotEmpty(inSvg);
        Assert.All(
            inSvg, at => Assert.Contains(onPage, other => Math.Abs(other.Item1 - at.X) < 0.005 && Math.Abs(other.Item2 - at.Y) < 0.005));

        void Draw(Canvas canvas)
        {
            var top = 10.0;
            foreach (var block in blocks)
            {
                block.Draw(canvas, top);
                top += block.Height;
            }
        }
    }

    private static XDocument Read(LineDrawing drawing) => XDocument.Parse(Encoding.UTF8.GetString(drawing.Svg.Span));

    private static List<string> Texts(LineDrawing drawing) => [.. Read(drawing).Descendants(Svg + "text").Select(text => text.Value)];
}
