using System.Collections.Immutable;
using BendSheet.Core.Units;
using BendSheet.Core.Workshop;

namespace BendSheet.Core.Fittings;

/// <summary>The thread that a standard gives to a port for tube of one size.</summary>
/// <param name="Seat">What seals it.</param>
/// <param name="Size">The tube's outside diameter; of a taper thread its nominal size.</param>
/// <param name="Thread">The nut's.</param>
/// <param name="Source">Where it stands.</param>
/// <param name="Dash">Sixteenths of an inch of tube, by which aircraft fittings are named; 0 where they are not.</param>
public sealed record StandardPort(Seat Seat, Length Size, ScrewThread Thread, PublishedSource Source, int Dash = 0)
{
    private static PublishedSource Aircraft { get; } = new("AN818 Rev 20, Figure 1", Confidence.Confirmed);

    private static PublishedSource BritishCars { get; } = new("an article on classic-car brake plumbing", Confidence.Confirmed);

    private static PublishedSource BrakePipe { get; } = new("a truck service manual, for DIN 74234 brake pipe", Confidence.Confirmed);

    private static PublishedSource Automotive { get; } = new("SAE J512", Confidence.FromMemory);

    private static PublishedSource MetricBrake { get; } = new("ISO 4038", Confidence.FromMemory);

    private static PublishedSource PipeThread { get; } = new("ASME B1.20.1", Confidence.FromMemory);

    /// <summary>Every row. Of several for one seat and size the first is what the size alone stands for.</summary>
    public static ImmutableArray<StandardPort> All { get; } =
    [
        Dashed(2, 5.0 / 16, 24),
        Dashed(3, 3.0 / 8, 24),
        Dashed(4, 7.0 / 16, 20),
        Dashed(5, 1.0 / 2, 20),
        Dashed(6, 9.0 / 16, 18),
        Dashed(8, 3.0 / 4, 16),
        Dashed(10, 7.0 / 8, 14),
        Dashed(12, 17.0 / 16, 12),
        Dashed(16, 21.0 / 16, 12),
        Dashed(20, 13.0 / 8, 12),
        Dashed(24, 15.0 / 8, 12),
        Inch(Seat.Inverted45, 1.0 / 8, 5.0 / 16, 28, Automotive),
        Inch(Seat.Inverted45, 3.0 / 16, 3.0 / 8, 24, BritishCars),
        Inch(Seat.Inverted45, 3.0 / 16, 3.0 / 8, 24, Automotive),
        Inch(Seat.Inverted45, 1.0 / 4, 7.0 / 16, 24, Automotive),
        Inch(Seat.Inverted45, 1.0 / 4, 7.0 / 16, 20, BritishCars),
        Inch(Seat.Inverted45, 5.0 / 16, 1.0 / 2, 20, Automotive),
        Inch(Seat.Inverted45, 3.0 / 8, 5.0 / 8, 18, Automotive),
        Inch(Seat.Inverted45, 1.0 / 2, 3.0 / 4, 18, Automotive),
        Inch(Seat.Flare45, 1.0 / 8, 5.0 / 16, 24, Automotive),
        Inch(Seat.Flare45, 3.0 / 16, 3.0 / 8, 24, Automotive),
        Inch(Seat.Flare45, 1.0 / 4, 7.0 / 16, 20, Automotive),
        Inch(Seat.Flare45, 5.0 / 16, 1.0 / 2, 20, Automotive),
        Inch(Seat.Flare45, 3.0 / 8, 5.0 / 8, 18, Automotive),
        Inch(Seat.Flare45, 1.0 / 2, 3.0 / 4, 16, Automotive),
        Metric(4.75, 10, 1, BrakePipe),
        Metric(4.75, 10, 1, MetricBrake),
        Metric(4.75, 12, 1, MetricBrake),
        Metric(6, 12, 1, MetricBrake),
        Pipe(1.0 / 16, 27),
        Pipe(1.0 / 8, 27),
        Pipe(1.0 / 4, 18),
        Pipe(3.0 / 8, 18),
        Pipe(1.0 / 2, 14),
        Pipe(3.0 / 4, 14),
    ];

    /// <summary>All rows for tube, or a pipe thread, of a size.</summary>
    public static IEnumerable<StandardPort> Find(Seat seat, Length size) => All.Where(row => row.Seat == seat && row.IsOfSize(size));

    /// <summary>The row that a dash size names; null where the standard has none.</summary>
    public static StandardPort? OfDash(int dash) => All.FirstOrDefault(row => row.Dash > 0 && row.Dash == dash);

    /// <summary>What a port is that is named by this row.</summary>
    public PortSpec Port => new(Thread, Seat, Source);

    private bool IsOfSize(Length size) => Math.Abs((size - Size).Millimetres) <= Tolerances.SameTubeSize.Millimetres;

    private static StandardPort Dashed(int dash, double thread, double perInch) =>
        Inch(Seat.Flare37, dash / 16.0, thread, perInch, Aircraft) with { Dash = dash };

    private static StandardPort Inch(Seat seat, double tube, double thread, double perInch, PublishedSource source) =>
        new(seat, Length.FromInches(tube), ScrewThread.Inch(thread, perInch), source);

    private static StandardPort Metric(double tube, double thread, double pitch, PublishedSource source) =>
        new(Seat.Bubble, Length.FromMillimetres(tube), ScrewThread.Metric(thread, pitch), source);

    private static StandardPort Pipe(double size, double perInch) => Inch(Seat.Taper, size, size, perInch, PipeThread);
}
