using System.Collections.Immutable;
using BendSheet.Core.Units;
using BendSheet.Core.Workshop;

namespace BendSheet.Core.Bench;

/// <summary>How a tool's pull angle follows from the bend that is wanted.</summary>
public enum SpringbackLaw
{
    /// <summary>No test bends: the pull is the bend.</summary>
    Unknown,

    /// <summary>Test bends of one angle: pull and bend in proportion.</summary>
    Proportion,

    /// <summary>Test bends of two angles or more: a straight line by least squares.</summary>
    Line,
}

/// <summary>
/// What test bends say about how far a tool must be pulled, so that the tube comes back to the bend. The pull is never less than the bend:
/// tube comes back, it does not go on.
/// </summary>
/// <remarks>
/// Two angles or more: pull = a + s·bend by least squares. Test bends that all lie within <see cref="Tolerances.SameTestBend"/> count as
/// one angle; then pull = s·bend, also by least squares.
/// </remarks>
public sealed class Springback
{
    /// <summary>19 of 20 new bends.</summary>
    public const double Probability = 0.95;

    private readonly StraightLine? _line;
    private readonly double _proportion;

    private Springback(ImmutableArray<BenderTest> tests)
    {
        Tests = tests;
        if (tests.IsEmpty)
        {
            return;
        }

        (double Got, double Pull)[] points = [.. tests.Select(test => (test.Got.Degrees, test.Pull!.Value.Degrees))];
        Smallest = Angle.FromDegrees(points.Min(point => point.Got));
        Largest = Angle.FromDegrees(points.Max(point => point.Got));
        if (IsOneAngle)
        {
            _proportion = points.Sum(point => point.Got * point.Pull) / points.Sum(point => point.Got * point.Got);
        }
        else
        {
            _line = StraightLine.Through(points);
        }
    }

    /// <summary>The bends that were pulled and looked at, in the order of the file.</summary>
    public ImmutableArray<BenderTest> Tests { get; }

    /// <summary>The smallest bend tested; zero without tests.</summary>
    public Angle Smallest { get; }

    /// <summary>The largest bend tested; zero without tests.</summary>
    public Angle Largest { get; }

    /// <summary>How the pull is found.</summary>
    public SpringbackLaw Law => Tests.IsEmpty ? SpringbackLaw.Unknown : _line is null ? SpringbackLaw.Proportion : SpringbackLaw.Line;

    private bool IsOneAngle => Largest + -Smallest <= Tolerances.SameTestBend;

    /// <summary>What the tests say.</summary>
    /// <param name="tests">Those that count for one tube; the ones that were not pulled are left out.</param>
    public static Springback Of(IEnumerable<BenderTest> tests) => new([.. tests.Where(test => test.Pull is not null)]);

    /// <summary>
    /// Further than any tube bent by hand comes back, with plenty to spare: by more than 10° and a quarter of the bend, so that a figure
    /// must have slipped. Common practice, no source.
    /// </summary>
    public static bool IsDoubtful(Angle pull, Angle bend) => pull.Degrees - bend.Degrees > 10 + (bend.Degrees / 4);

    /// <summary>
    /// Further than any tube comes back, however it is bent: by more than 45° and half of the bend. Only tests that contradict each other
    /// come to it. Common practice, no source.
    /// </summary>
    public static bool CannotBe(Angle pull, Angle bend) => pull.Degrees - bend.Degrees > 45 + (bend.Degrees / 2);

    /// <summary>What to pull to for a bend; never less than the bend.</summary>
    public Angle Pull(Angle bend)
    {
        var pull = Lawful(bend);
        return pull > bend ? pull : bend;
    }

    /// <summary>How much further a test was pulled than the law has it.</summary>
    public Angle Residual(BenderTest test) => test.Pull!.Value + -Lawful(test.Got);

    /// <summary>The bend lies between the tested ones, or near enough to one of them.</summary>
    public bool Covers(Angle bend) =>
        !Tests.IsEmpty && bend + Tolerances.SameTestBend >= Smallest && bend <= Largest + Tolerances.SameTestBend;

    /// <summary>
    /// How far one new bend's pull lies from the law, either way, for 19 of 20 bends; null below three tests of two angles.
    /// </summary>
    public Angle? Uncertainty(Angle bend) => AngleOf(_line?.PredictionHalfWidth(bend.Degrees, Probability));

    /// <summary>What the uncertainty of a bend would come to with one more test of it that scatters as the others do.</summary>
    public Angle? UncertaintyWithOneMore(Angle bend) => AngleOf(_line?.HalfWidthWithOneMore(bend.Degrees, Probability));

    private static Angle? AngleOf(double? degrees) => degrees is { } known ? Angle.FromDegrees(known) : null;

    private Angle Lawful(Angle bend) => Law switch
    {
        SpringbackLaw.Unknown => bend,
        SpringbackLaw.Proportion => Angle.FromDegrees(_proportion * bend.Degrees),
        _ => Angle.FromDegrees(_line!.At(bend.Degrees)),
    };
}
