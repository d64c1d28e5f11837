using BendSheet.Core.Findings;
using BendSheet.Core.Workshop;

namespace BendSheet.Core.Tests.Bench;

/// <summary>Tests of a tool, in degrees and millimetres.</summary>
internal static class TestBends
{
    public static BenderTest Pulled(double pull, double got) => new(Lines.Deg(got), At) { Pull = Lines.Deg(pull) };

    public static BenderTest Piece(
        double got, double length, double first, double second, MeasuredTo habit = MeasuredTo.Corner, double? diameter = null) =>
        new(Lines.Deg(got), At)
        {
            Piece = new(Lines.Mm(length), Lines.Mm(first), Lines.Mm(second), habit, diameter is { } known ? Lines.Mm(known) : null),
        };

    public static BenderTest Marked(
        double got, double length, double first, double second, double mark, MeasuredTo habit = MeasuredTo.Corner)
    {
        var test = Piece(got, length, first, second, habit);
        return test with { Piece = test.Piece! with { Mark = Lines.Mm(mark) } };
    }

    private static SourcePosition At { get; } = new("test.yaml", 5, 9);
}
