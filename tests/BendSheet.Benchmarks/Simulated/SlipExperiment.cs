using System.Collections.Immutable;
using System.Globalization;
using System.Text;
using BendSheet.Core.Survey;
using BendSheet.Core.Templates;
using BendSheet.Core.Units;

namespace BendSheet.Benchmarks.Simulated;

/// <summary>
/// Random lines of 3 to 8 bends with three to six measurements beside the rows, as they are asked for, and one planted slip: how often it
/// is named.
/// </summary>
internal static class SlipExperiment
{
    private const int Lines = 500;

    /// <summary>A standardised residual that no method overlooks is expected to be beyond this.</summary>
    private const double Seen = 4;

    private enum Planted
    {
        None,
        Sense,
        Included,
        Digits,
        TenMillimetres,
        Inch,
    }

    /// <summary>The figures, a line for each kind of slip.</summary>
    public static string Run()
    {
        var text = new StringBuilder("slip            lines  visible  first  among  alone  wrong alone  suspected\n");
        foreach (var planted in Enum.GetValues<Planted>())
        {
            var (visible, first, among, alone, wrong, suspected) = (0, 0, 0, 0, 0, 0);
            var chance = new Chance(20261126 + (int)planted);
            for (var i = 0; i < Lines; i++)
            {
                var (slipped, survey, seen) = One(planted, chance);
                suspected += survey.IsSuspect ? 1 : 0;
                wrong += survey.Slips.Length == 1 && !Is(survey, slipped) ? 1 : 0;
                visible += seen ? 1 : 0;
                first += seen && !survey.Slips.IsEmpty && Is(survey, slipped) ? 1 : 0;
                among += seen && survey.Slips.Any(slip => string.Equals(slip.Name, slipped, StringComparison.Ordinal)) ? 1 : 0;
                alone += seen && survey.Slips.Length == 1 && Is(survey, slipped) ? 1 : 0;
            }

            text.Append(CultureInfo.InvariantCulture, $"{planted,-15} {Lines,5} {visible,8} {Part(first, visible),6} ")
                .Append(CultureInfo.InvariantCulture, $"{Part(among, visible),6} ")
                .Append(CultureInfo.InvariantCulture, $"{Part(alone, visible),6} {Part(wrong, Lines),12} {Part(suspected, Lines),10}\n");
        }

        return text.ToString();
    }

    /// <summary>First, or second after one that no tape can tell from it: of three bends, either rotation the other way is the mirror
    /// image of the other.</summary>
    private static bool Is(LineSurvey survey, string? slipped) =>
        string.Equals(survey.Slips[0].Name, slipped, StringComparison.Ordinal)
        || (survey is { Slips: [{ Kind: SlipKind.Sense }, { Kind: SlipKind.Sense } second, ..], Line.Route.Bends.Length: 3 }
            && string.Equals(second.Name, slipped, StringComparison.Ordinal));

    private static string Part(int of, int all) => all == 0 ? "–" : (100.0 * of / all).ToString("0.0", CultureInfo.InvariantCulture) + " %";

    private static (string? Slipped, LineSurvey Survey, bool Seen) One(Planted planted, Chance chance)
    {
        var line = SimulatedLine.Random(chance, chance.Whole(3, 9));
        var read = line.Read(chance);
        var beside = Asked(line, read, chance.Whole(3, 7), chance);
        var clean = LineSurvey.Of(read.Template(beside))!;
        if (planted == Planted.None)
        {
            return (null, clean, false);
        }

        var (name, slipped, changed) = Plant(planted, read, beside, chance);
        var survey = LineSurvey.Of(slipped.Template(changed))!;

        // The same slip among measurements without any error: what nobody could see there, nobody can see.
        var without = line with
        {
            Legs = Less(line.Legs, slipped.Legs, read.Legs),
            Turns = Less(line.Turns, slipped.Turns, read.Turns),
            Rotations = Less(line.Rotations, slipped.Rotations, read.Rotations),
        };
        var exact = beside.Zip(changed, (one, other) => one with
        {
            Value = Length.FromMillimetres(line.ValueOf(one.Quantity)) + (other.Value - one.Value),
        });
        var seen = LineSurvey.Of(without.Template([.. exact]))!.Measurements.Any(one => Math.Abs(one.Standardised ?? 0) > Seen);
        return (name, survey, seen);
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

            beside = [.. beside, .. next.Select(one => line.Measured(one.Quantity, one.Within.Millimetres, chance))];
        }

        return beside;
    }

    private static (string Name, SimulatedLine Read, ImmutableArray<TapedMeasurement> Beside) Plant(
        Planted planted, SimulatedLine read, ImmutableArray<TapedMeasurement> beside, Chance chance)
    {
        switch (planted)
        {
            case Planted.Sense:
                var roll = chance.Whole(1, read.Rotations.Length);
                return ($"rotation {roll + 1}", read with { Rotations = Changed(read.Rotations, roll, value => -value) }, beside);
            case Planted.Included:
                var bend = chance.Whole(0, read.Turns.Length);
                return ($"bend {bend + 1}", read with { Turns = Changed(read.Turns, bend, value => 180 - value) }, beside);
            case Planted.Digits:
                // Typed in whole millimetres, two neighbouring digits exchanged.
                var leg = chance.Whole(0, read.Legs.Length);
                return ($"leg {leg + 1}", read with { Legs = Changed(read.Legs, leg, value => Exchanged(value, chance)) }, beside);
            default:
                var by = (planted == Planted.Inch ? 25.4 : 10) * (chance.Whole(0, 2) == 0 ? -1 : 1);
                var which = chance.Whole(0, read.Legs.Length + beside.Length);
                if (which < read.Legs.Length)
                {
                    return ($"leg {which + 1}", read with { Legs = Changed(read.Legs, which, value => value + by) }, beside);
                }

                var one = beside[which - read.Legs.Length];
                return (
                    one.Quantity.Name(read.Turns.Length),
                    read,
                    beside.SetItem(which - read.Legs.Length, one with { Value = one.Value + Length.FromMillimetres(by) }));
        }
    }

    private static double Exchanged(double value, Chance chance)
    {
        var digits = Math.Round(value).ToString("0", CultureInfo.InvariantCulture);
        var at = chance.Whole(0, digits.Length - 1);
        return double.Parse($"{digits[..at]}{digits[at + 1]}{digits[at]}{digits[(at + 2)..]}", CultureInfo.InvariantCulture);
    }

    private static double[] Changed(double[] figures, int index, Func<double, double> change) =>
        [.. figures.Select((figure, i) => i == index ? change(figure) : figure)];
}
