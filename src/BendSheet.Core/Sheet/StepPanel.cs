using System.Collections.Immutable;
using BendSheet.Core.Bench;
using BendSheet.Core.Fittings;
using BendSheet.Core.Units;
using BendSheet.Core.Workshop;

namespace BendSheet.Core.Sheet;

/// <summary>One thing that is done, with everything that is needed for it.</summary>
/// <param name="Heading">Short, to be read from afar.</param>
/// <param name="Text">What to do; of a bend, what does not stand in figures.</param>
public sealed record StepPanel(string Heading, string Text)
{
    /// <summary>Of a bend; null elsewhere.</summary>
    public BendStepFigures? Bend { get; init; }

    /// <summary>Of the tube turned round between two bends; null elsewhere.</summary>
    public FlipPicture? Flip { get; init; }

    /// <summary>Of an end that is finished; null elsewhere.</summary>
    public EndPicture? End { get; init; }

    /// <summary>The person's own note; any length; empty where there is none.</summary>
    public string Note { get; init; } = string.Empty;
}

/// <summary>A bend in large figures, with the tube in the tool.</summary>
public sealed record BendStepFigures
{
    /// <summary>What stands in the former: the number, or the first and the last one of a coil.</summary>
    public required string Number { get; init; }

    /// <summary>What the hands set: the table's own; of a coil, of its first bend.</summary>
    public required BendRow Row { get; init; }

    /// <summary>What to measure then: <c>then A to 2, mm</c>.</summary>
    public required string CheckName { get; init; }

    /// <summary>What it should be.</summary>
    public required string Check { get; init; }

    /// <summary>The tube in the tool.</summary>
    public required StepPicture Picture { get; init; }

    /// <summary>The picture in words.</summary>
    public required string Alternative { get; init; }
}

/// <summary>The tube in the tool before and after a bend is made.</summary>
/// <param name="Line">With a plan.</param>
/// <param name="Bends">In the tool, from 0.</param>
/// <param name="Made">Bends that were made before, from 0.</param>
public sealed record StepPicture(SolvedLine Line, (int First, int Last) Bends, ImmutableHashSet<int> Made)
{
    /// <summary>Of the former, to the tube's centreline.</summary>
    public Length Radius => Line.Plan!.Bends[Bends.First].Layout.Radius;

    /// <summary>Of the tube, over the outside.</summary>
    public Length TubeDiameter => Line.Template.Tube.OutsideDiameter;

    /// <summary>The end whose side is held.</summary>
    public TubeEnd Held => Line.Plan!.Bends[Bends.First].Held;

    /// <summary>Before the pull.</summary>
    /// <param name="longest">Longer straights are drawn as long as this; null for the tube as it is.</param>
    public PartBent Before(Length? longest = null) => PartBent.Of(Line, Bends, Made.Contains, longest);

    /// <summary>After the pull.</summary>
    /// <param name="longest">Longer straights are drawn as long as this; null for the tube as it is.</param>
    public PartBent After(Length? longest = null) => PartBent.Of(Line, Bends, IsMadeThen, longest);

    /// <summary>Whether a bend, counted from 0, is made after the pull.</summary>
    public bool IsMadeThen(int bend) => (bend >= Bends.First && bend <= Bends.Last) || Made.Contains(bend);
}

/// <summary>The part-bent tube in a tool that stays where it is: after the last bend, and turned round for the next one.</summary>
/// <param name="Before">The bend made last; drawn when it is made.</param>
/// <param name="After">The bend made next; drawn before it is made.</param>
public sealed record FlipPicture(StepPicture Before, StepPicture After)
{
    /// <summary>Below the tube as it was.</summary>
    public string BeforeInWords => StepWords.Was(Before.Held);

    /// <summary>Below the tube as it is then.</summary>
    public string AfterInWords => StepWords.IsNow(After.Held);

    /// <summary>The pictures in words.</summary>
    public string Alternative => $"The part-bent tube in the tool, twice: {BeforeInWords}; then turned round, {AfterInWords}. The tool "
        + "stays where it is, and the same side of the tube lies at the former.";
}

/// <summary>An end of the part-bent tube with its hardware, as it is about to be flared.</summary>
/// <param name="End">Which one.</param>
/// <param name="Tube">Of the end alone, with its nearest bend where that is made.</param>
/// <param name="Fitting">What is put on it.</param>
/// <param name="OutsideDiameter">Of the tube.</param>
public sealed record EndPicture(TubeEnd End, EndOfTube Tube, Fitting Fitting, Length OutsideDiameter)
{
    /// <summary>From the end inwards.</summary>
    public ImmutableArray<PieceOnEnd> Pieces { get; init; } = [];

    /// <summary>What stands out of the bar, where it is known; a little is drawn where the tool sets it.</summary>
    public Length? StandsOut { get; init; }

    /// <summary>Beside what stands out: how far, or what says it; empty for an end that is not flared.</summary>
    public required string StandsOutInWords { get; init; }

    /// <summary>A bar grips it.</summary>
    public bool HasBar => Fitting.Flare != Flare.None;

    /// <summary>The picture in words.</summary>
    public required string Alternative { get; init; }
}

/// <summary>A piece of hardware on an end.</summary>
/// <param name="Piece">As the file has it.</param>
/// <param name="Shape">How it is drawn.</param>
/// <param name="InWords">Beside it: what it is and which side faces the end.</param>
public sealed record PieceOnEnd(EndHardware Piece, HardwareShape Shape, string InWords);

/// <summary>What a piece of hardware looks like.</summary>
public enum HardwareShape
{
    /// <summary>A plain ring.</summary>
    Ring,

    /// <summary>A hexagon behind a thread, which faces the end.</summary>
    Nut,

    /// <summary>A ring with a cone, which faces the end.</summary>
    Sleeve,
}
