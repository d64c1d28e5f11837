using BendSheet.Core.Sheet;
using BendSheet.Core.Templates;
using BendSheet.Core.Units;

namespace BendSheet.Core.Tests.Sheet;

public class DrawingWordsTests
{
    [Fact]
    public void The_straight_tube_is_told_by_its_marks_and_ends()
    {
        var sheet = FullLine.Content(FullLine.Template);
        var marks = sheet.Strip.Bends;
        Assert.Equal(
            $"The straight tube, {sheet.CutLength.Main} long, with marks at {marks[0].Label} (bend 1, line at 1:30), "
            + $"{marks[1].Label} (bend 2, line at 10:30), {marks[2].Label} (bend 3, line at 12:00), "
            + "in millimetres from the finished flare face of A. At A, from the end inwards: flare, sleeve, nut. At B, from the end "
            + "inwards: flare, tube nut. 25.0 mm to trim at B.",
            DrawingWords.OfStrip(sheet));
    }

    [Fact]
    public void The_shape_is_told_from_A_to_B_whatever_the_order_of_work()
    {
        var sheet = FullLine.Content(FullLine.Template);
        var after = sheet.Rows.ToDictionary(row => row.Number, row => row.StraightAfter);
        Assert.Equal(
            $"The finished shape, pictorial view, the tube from A to B: straight, bend 1 of 45°, {after[1]} mm straight; bend 2 of 30°, "
            + $"rotated 90° cw, {after[2]} mm straight; "
            + $"bend 3 of 90°, rotated 45° ccw, {after[3]} mm straight. Over the outside, X × Y × Z, it is {sheet.Envelope}.",
            DrawingWords.OfShape(sheet, "pictorial view"));
        Assert.Equal(
            $"The same shape seen from above: X right, Y up. Over the outside, X × Y × Z, it is {sheet.Envelope}.",
            DrawingWords.OfFlatView(sheet, "from above: X right, Y up"));
    }

    [Fact]
    public void A_straight_tube_has_no_marks()
    {
        var sheet = FullLine.Content(FullLine.Template with
        {
            Route = Route.OfRows([new Row(Lines.Mm(300), Lines.StraightAt(0), null)]).Route!,
            From = new(null, null, Length.Zero),
            To = new(null, null, Length.Zero),
        });
        Assert.Equal("The straight tube, 300.0 mm long, with no marks.", DrawingWords.OfStrip(sheet));
        Assert.Equal("The finished shape, pictorial view: a straight tube from A to B.", DrawingWords.OfShape(sheet, "pictorial view"));
    }
}
