using System.Collections.Immutable;
using System.Globalization;
using System.Text;
using BendSheet.Core.Survey;
using BendSheet.Core.Templates;
using BendSheet.Core.Units;

namespace BendSheet.Benchmarks.Simulated;

/// <summary>
/// Random lines of 3 to 8 bends with three to six measurements beside the rows, as they are asked for and typed in whole millimetres and
/// degrees, and one planted slip: how often it is named. Beside it how often somebody would name it who knows which slips are planted here,
/// each kind as often as the others, and tries every one of them in full: nobody can do better from the same figures.
/// </summary>
internal static class SlipExperiment
{
    private const int Lines = 500;

    /// <summary>Of lines without a slip few are suspected, so that more are needed to count them.</summary>
    private const int CleanLines = 4000;

    /// <summary>A standardised residual that no method overlooks is expected to be beyond this.</summary>
    private const double Seen = 4;

    /// <summary>The figures, a line for each kind of slip.</summary>
    public static string Run()
    {
        var text = new StringBuilder("slip            lines  visible  first  among  alone  best can  wrong alone  suspected\n");
        foreach (var planted in Enum.GetValues<Planted>())
        {
            var (visible, first, among, alone, best, wrong, suspected) = (0, 0, 0, 0, 0, 0, 0);
            var lines = planted == Planted.None ? CleanLines : Lines;
            var chance = new Chance(20261126 + (int)planted);
            for (var i = 0; i < lines; i++)
            {
                var (slip, survey, seen) = One(planted, chance);
                suspected += survey.IsSuspect ? 1 : 0;
                wrong += survey.Slips.Length == 1 && !Is(survey, slip.Name) ? 1 : 0;
                if (!seen)
                {
                    continue;
                }

                visible++;
                first += !survey.Slips.IsEmpty && Is(survey, slip.Name) ? 1 : 0;
                among += survey.Slips.Any(one => Is(one.Name, slip.Name)) ? 1 : 0;
                alone += survey.Slips.Length == 1 && Is(survey, slip.Name) ? 1 : 0;
                best += survey.IsSuspect && Is(PlantedSlip.Likeliest(slip.Read, slip.Beside), slip.Name) ? 1 : 0;
            }

            text.Append(CultureInfo.InvariantCulture, $"{planted,-15} {lines,5} {visible,8} {Part(first, visible),6} ")
                .Append(CultureInfo.InvariantCulture, $"{Part(among, visible),6} {Part(alone, visible),6} {Part(best, visible),9} ")
                .Append(CultureInfo.InvariantCulture, $"{Part(wrong, lines),12} {Part(suspected, lines),10}\n");
        }

        return text.ToString();
    }

    /// <summary>First, or second after one that no tape can tell from it: of three bends, either rotation the other way is the mirror
    /// image of the other.</summary>
    private static bool Is(LineSurvey survey, string? slipped) =>
        Is(survey.Slips[0].Name, slipped)
        || (survey is { Slips: [{ Kind: SlipKind.Sense }, { Kind: SlipKind.Sense } second, ..], Line.Route.Bends.Length: 3 }
            && Is(second.Name, slipped));

    private static bool Is(string? name, string? slipped) => string.Equals(name, slipped, StringComparison.Ordinal);

    private static string Part(int of, int all) => all == 0 ? "–" : (100.0 * of / all).ToString("0.0", CultureInfo.InvariantCulture) + " %";

    private static (PlantedSlip Slip, LineSurvey Survey, bool Seen) One(Planted planted, Chance chance)
    {
        var line = SimulatedLine.Random(chance, chance.Whole(3, 9));
        var read = line.ReadWhole(chance);
        var beside = Asked(line, read, chance.Whole(3, 7), chance);
        var slip = chance.One(PlantedSlip.All(planted, read, beside));
        var survey = LineSurvey.Of(slip.Read.Template(slip.Beside))!;

        // The same slip among measurements without any error: what nobody could see there, nobody can see.
        var without = line with
        {
            Legs = Less(line.Legs, slip.Read.Legs, read.Legs),
            Turns = Less(line.Turns, slip.Read.Turns, read.Turns),
            Rotations = Less(line.Rotations, slip.Read.Rotations, read.Rotations),
        };
        var exact = beside.Zip(slip.Beside, (one, other) => one with
        {
            Value = Length.FromMillimetres(line.ValueOf(one.Quantity)) + (other.Value - one.Value),
        });
        var seen = planted != Planted.None
            && LineSurvey.Of(without.Template([.. exact]))!.Measurements.Any(one => Math.Abs(one.Standardised ?? 0) > Seen);
        return (slip, survey, seen);
    }

    private static double[] Less(double[] line, double[] slipped, double[] read) =>
        [.. line.Select((figure, i) => figure + slipped[i] - read[i])];

    /// <summary>What the tool asks for, measured.</summary>
    private static ImmutableArray<TapedMeasurement> Asked(SimulatedLine line, SimulatedLine read, int count, Chance chance)
    {
        ImmutableArray<TapedMeasurement> beside = [];
        while (beside.Length < count)
        {
            var template = read.Template(beside) with { Wanted = new(Length.FromMillimetres(1e-6), Angle.FromDegrees(1e-6)) };
            var next = LineSurvey.Of(template)!.Next.Take(count - beside.Length).ToList();
            if (next.Count == 0)
            {
                return beside;
            }

            beside = [.. beside, .. next.Select(one => line.MeasuredWhole(one.Quantity, one.Within.Millimetres, chance))];
        }

        return beside;
    }
}
