using System.Collections.Immutable;
using System.Globalization;
using System.Text;
using BendSheet.Core.Geometry;
using BendSheet.Core.Survey;
using BendSheet.Core.Templates;
using BendSheet.Core.Units;

namespace BendSheet.Benchmarks.Simulated;

/// <summary>
/// An evening's work, simulated: a route is measured with the errors that are typed as tolerances, what the tool asks for is measured too,
/// and a tube is made of what it then says. How far from its port does B land, once the line is rolled in A to suit?
/// </summary>
internal static class Evening
{
    private const int Lines = 1000;

    /// <summary>Of a mark, in millimetres, of a bend and of a roll, in degrees: a practised hand, a tool that has been learned.</summary>
    private const double MarkError = 0.5;
    private const double BendError = 0.7;
    private const double RollError = 1;

    /// <summary>The figures, a line for each number of measurements.</summary>
    public static string Run()
    {
        var text = new StringBuilder("measurements  made   median miss  median askew  within 3 mm  within 3 mm and 2°\n");
        foreach (var made in new[] { false, true })
        {
            foreach (var count in Enumerable.Range(0, 5))
            {
                var chance = new Chance(20261126);
                var landings = Enumerable.Range(0, Lines).Select(_ => One(count, made, chance)).ToList();
                text.Append(CultureInfo.InvariantCulture, $"{count,12}  {(made ? "by hand" : "exactly"),-7}")
                    .Append(CultureInfo.InvariantCulture, $"{Median(landings.Select(one => one.Miss)),8:0.0} mm  ")
                    .Append(CultureInfo.InvariantCulture, $"{Median(landings.Select(one => one.Askew)),11:0.0}°  ")
                    .Append(CultureInfo.InvariantCulture, $"{100.0 * landings.Count(one => one.Miss <= 3) / Lines,9:0.0} %  ")
                    .Append(CultureInfo.InvariantCulture, $"{100.0 * landings.Count(Fits) / Lines,16:0.0} %\n");
            }
        }

        return text.ToString();
    }

    private static bool Fits((double Miss, double Askew) landing) => landing is { Miss: <= 3, Askew: <= 2 };

    private static double Median(IEnumerable<double> figures) => figures.Order().ElementAt(Lines / 2);

    private static (double Miss, double Askew) One(int count, bool byHand, Chance chance)
    {
        var line = SimulatedLine.Random(chance, chance.Whole(3, 7));
        var read = line.Read(chance);
        ImmutableArray<TapedMeasurement> beside =
        [
            .. LineSurvey.Of(read.Template() with { Wanted = new(Length.FromMillimetres(1e-6), Angle.FromDegrees(1e-6)) })!.Next
                .Take(count).Select(next => line.Measured(next.Quantity, next.Within.Millimetres, chance)),
        ];
        var survey = LineSurvey.Of(read.Template(beside))!;
        var route = survey.Line.Route;
        var tube = new SimulatedLine(
            [.. route.Legs.Select(leg => leg.Measured.Millimetres + (byHand ? chance.Error(MarkError) : 0))],
            [.. route.Bends.Select(bend => bend.Turn.Degrees + (byHand ? chance.Error(BendError) : 0))],
            [.. route.Bends.Select(bend => bend.Rotation.Degrees + (byHand ? chance.Error(RollError) : 0))]);
        var (port, wanted) = line.Landing();
        var (end, enters) = tube.Landing();
        return ((port - end).Norm, Math.Acos(Math.Clamp(wanted.Dot(enters), -1, 1)) * 180 / Math.PI);
    }

    /// <summary>End B and the last direction, seen from A with B's side up.</summary>
    private static (Vector3D EndB, Vector3D Direction) Landing(this SimulatedLine line)
    {
        var centreline = RouteLayout.Of(line.Template()).Layout!.Centreline(Frame.Default);
        var (b, way) = (centreline.EndB, centreline.Straights[^1].Start.Direction);
        var aside = Math.Sqrt((b.Y * b.Y) + (b.Z * b.Z));
        var (cos, sin) = (b.Y / aside, b.Z / aside);
        return (new(b.X, aside, 0), new(way.X, (cos * way.Y) + (sin * way.Z), (cos * way.Z) - (sin * way.Y)));
    }
}
