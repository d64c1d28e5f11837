using BendSheet.Core.Bench;
using BendSheet.Core.Units;
using BendSheet.Core.Workshop;

namespace BendSheet.Cli.Output;

/// <summary>What test pieces with a pen mark say about where the tool's own line stands; nothing where no piece has one.</summary>
internal static class LearnedLine
{
    /// <summary>The lines of the part.</summary>
    public static IEnumerable<string> Lines(Bender bender, LengthNotation notation)
    {
        var line = ToolLine.Of(bender);
        if (line.Learned is not { } offset)
        {
            yield break;
        }

        yield return $"The tool's line{(bender.Line is { } name ? " " + name : string.Empty)}, from "
            + $"{Counted.Words(line.Pieces.Length, "test piece")} with a mark:";
        yield return $"  offset {Signed(offset, notation)} ± {notation.Fine(line.Either)}: the mark lies {Where(offset, bender, notation)}";
        foreach (var (test, own) in line.Pieces)
        {
            yield return $"  {LearnedTools.TestName(bender, test)}: offset {Signed(own, notation)}";
        }

        yield return line.Pieces.Length < 3
            ? $"  ±: what two readings to about {notation.Fine(Length.FromMillimetres(0.5))} leave open; three pieces show how well your "
                + "hands repeat it."
            : "  ±: 19 times in 20 the tool's line stands within it.";
    }

    /// <summary>The offset that marks are made with, in words; empty where no piece has a pen mark.</summary>
    public static string Used(Bender bender, LengthNotation notation)
    {
        var line = ToolLine.Of(bender);
        return line.Pieces.IsEmpty ? string.Empty
            : $"; offset {Signed(line.Offset, notation)} "
                + (line.IsTyped
                ? "(as typed, which counts more than the test pieces: take `offset` out to use theirs)"
                : "(from the test pieces)");
    }

    private static string Where(Length offset, Bender bender, LengthNotation notation)
    {
        var place = bender.Mark == MarkPlace.Start ? "the start of the bend" : "the middle of the bend";
        return offset == Length.Zero ? $"over {place}"
            : $"{notation.Fine(offset > Length.Zero ? offset : Length.Zero - offset)} from {place}, towards the side that is "
                + (offset > Length.Zero ? "swept" : "held");
    }

    private static string Signed(Length offset, LengthNotation notation) =>
        offset < Length.Zero ? "-" + notation.Fine(Length.Zero - offset) : notation.Fine(offset);
}
