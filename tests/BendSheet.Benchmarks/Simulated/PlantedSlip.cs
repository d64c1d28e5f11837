using System.Collections.Immutable;
using System.Globalization;
using BendSheet.Core.Survey;
using BendSheet.Core.Templates;
using BendSheet.Core.Units;

namespace BendSheet.Benchmarks.Simulated;

/// <summary>The kinds of slip that are planted.</summary>
internal enum Planted
{
    None,
    Sense,
    Included,
    Digits,
    TenMillimetres,
    Inch,
}

/// <summary>What somebody typed, with one figure changed as a tired person changes it. Changed again it is as before.</summary>
/// <param name="Name">Of the measurement that was changed.</param>
/// <param name="Read">The rows.</param>
/// <param name="Beside">What is beside them.</param>
internal sealed record PlantedSlip(string? Name, SimulatedLine Read, ImmutableArray<TapedMeasurement> Beside)
{
    /// <summary>Every slip of a kind that can be made of what was typed.</summary>
    public static IReadOnlyList<PlantedSlip> All(Planted kind, SimulatedLine read, ImmutableArray<TapedMeasurement> beside) => kind switch
    {
        Planted.Sense =>
        [
            .. Enumerable.Range(1, read.Rotations.Length - 1).Select(roll => new PlantedSlip(
                $"rotation {roll + 1}", read with { Rotations = Changed(read.Rotations, roll, -read.Rotations[roll]) }, beside)),
        ],
        Planted.Included =>
        [
            .. Enumerable.Range(0, read.Turns.Length).Select(bend => new PlantedSlip(
                $"bend {bend + 1}", read with { Turns = Changed(read.Turns, bend, 180 - read.Turns[bend]) }, beside)),
        ],
        Planted.Digits =>
        [
            .. Enumerable.Range(0, read.Legs.Length).SelectMany(leg => Exchanged(read.Legs[leg]).Select(
                value => new PlantedSlip($"leg {leg + 1}", read with { Legs = Changed(read.Legs, leg, value) }, beside))),
        ],
        Planted.TenMillimetres => Misread(10, read, beside),
        Planted.Inch => Misread(25.4, read, beside),
        _ => [new(null, read, beside)],
    };

    /// <summary>
    /// The slip whose undoing makes all agree best, among all that are planted, each kind as often as the others: the weighed sum of
    /// squares, and twice the logarithm of in how many ways the slip can be made.
    /// </summary>
    public static string? Likeliest(SimulatedLine read, ImmutableArray<TapedMeasurement> beside) =>
        Enum.GetValues<Planted>().Where(kind => kind != Planted.None)
            .Select(kind => All(kind, read, beside))
            .SelectMany(all => all.Select(slip => (slip.Name, Score: slip.ChiSquare() + (2 * Math.Log(all.Count)))))
            .MinBy(tried => tried.Score).Name;

    private static PlantedSlip[] Misread(double by, SimulatedLine read, ImmutableArray<TapedMeasurement> beside) =>
    [
        .. new[] { by, -by }.SelectMany(more => Enumerable.Range(0, read.Legs.Length + beside.Length).Select(which =>
            which < read.Legs.Length
                ? new PlantedSlip(
                    $"leg {which + 1}", read with { Legs = Changed(read.Legs, which, read.Legs[which] + more) }, beside)
                : Misread(beside[which - read.Legs.Length], more, read, beside))),
    ];

    private static PlantedSlip Misread(
        TapedMeasurement one, double more, SimulatedLine read, ImmutableArray<TapedMeasurement> beside) => new(
        one.Quantity.Name(read.Turns.Length),
        read,
        beside.Replace(one, one with { Value = one.Value + Length.FromMillimetres(more) }));

    private double ChiSquare()
    {
        var template = Read.Template(Beside);
        var line = ObservedLine.Of(template, SimulatedLine.Tolerance);
        return line.PlacesWith(line.Typed) is { } typed
            && Adjustment.Of(line, line.Typed, [.. Beside.Select(one => Weighing.Of(one, typed, SimulatedLine.Tolerance))]) is { } adjusted
            ? adjusted.ChiSquare
            : double.PositiveInfinity;
    }

    /// <summary>A whole number with two neighbouring digits exchanged.</summary>
    private static IEnumerable<double> Exchanged(double value)
    {
        var digits = value.ToString("0", CultureInfo.InvariantCulture);
        return Enumerable.Range(0, digits.Length - 1).Where(at => digits[at] != digits[at + 1]).Select(at =>
            double.Parse($"{digits[..at]}{digits[at + 1]}{digits[at]}{digits[(at + 2)..]}", CultureInfo.InvariantCulture));
    }

    private static double[] Changed(double[] figures, int index, double instead) =>
        [.. figures.Select((figure, i) => i == index ? instead : figure)];
}
