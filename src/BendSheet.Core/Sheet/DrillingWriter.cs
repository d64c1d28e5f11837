using System.Collections.Immutable;
using BendSheet.Core.Bench;
using BendSheet.Core.Units;

namespace BendSheet.Core.Sheet;

/// <summary>Words and rounds the holes along rails.</summary>
public static class DrillingWriter
{
    /// <summary>A strip for each straight of a line with at least two clips.</summary>
    /// <param name="line">A solved one.</param>
    /// <param name="notation">How lengths are written.</param>
    public static ImmutableArray<DrillingStrip> Of(SolvedLine line, LengthNotation notation) =>
        [.. ClipRun.Of(line).Select(run => Strip(ClipRail.Of(line, run), notation, null))];

    /// <summary>The strips that go with a line's sheet where it names a rail that other lines name too.</summary>
    /// <param name="line">A solved one.</param>
    /// <param name="sharing">All lines that name the rail, in the order of the file, this one among them.</param>
    /// <param name="withRail">The sheet has the strip of the rail: it is the first of those printed that lie on it.</param>
    /// <param name="notation">How lengths are written.</param>
    public static ImmutableArray<DrillingStrip> Of(
        SolvedLine line, IReadOnlyCollection<SolvedLine> sharing, Func<ClipRail, bool> withRail, LengthNotation notation)
    {
        ArgumentNullException.ThrowIfNull(line);
        ArgumentNullException.ThrowIfNull(withRail);
        if (line.Template.Clips?.Rail is not { } name || sharing.Count < 2)
        {
            return Of(line, notation);
        }

        var shared = ClipRail.Shared(name, sharing);
        var own = shared?.Lines.FirstOrDefault(one => Same(one.Line, line.Template.Name));
        var why = own is null ? WhyAlone(line, name, sharing, shared) : null;
        return
        [
            .. own is not null && withRail(shared!)
                ? [Strip(shared!, notation, WhyWithout(name, sharing, shared!))]
                : Array.Empty<DrillingStrip>(),
            .. ClipRun.Of(line).Where(run => run.Straight != own?.Straight).Select(run => Strip(ClipRail.Of(line, run), notation, why)),
        ];
    }

    private static DrillingStrip Strip(ClipRail rail, LengthNotation notation, string? remark)
    {
        var names = string.Join(", ", rail.Lines.Select(line => FormattableString.Invariant($"{line.Line}, straight {line.Straight}")));
        var holes = rail.Holes.Select((hole, i) => new DrillingHole(
            i + 1,
            hole.Place,
            notation.Figure(hole.Place),
            rail.Lines.Length == 1 ? [] : [.. hole.Clips.Select(clip => FormattableString.Invariant($"{clip.Line} {clip.Number}"))],
            hole.Clips.Select(clip => clip.Width).Max(),
            hole.Clips.Select(clip => clip.Drill).Max())).ToImmutableArray();
        var left = DrillingWords.Edge(rail);
        return new(rail.Name is null ? names : $"rail {rail.Name}: {names}", holes[^1].Place + holes[^1].Width, holes)
        {
            Edge = $"edge: {left}",
            Left = "← " + string.Join(", ", rail.Lines.Select(line => $"{(line.Reversed ? "B" : "A")} of {line.Line}")),
            Right = string.Join(", ", rail.Lines.Select(line => $"{(line.Reversed ? "A" : "B")} of {line.Line}")) + " →",
            HowTo = [.. HowTo(rail, holes, left, remark, notation)],
            Alternative = $"Drilling strip, {names}. Holes in {notation.UnitName} from the edge, {left}: "
                + string.Join(", ", holes.Select(hole => FormattableString.Invariant($"{hole.Number} at {hole.Label}"))) + ".",
        };
    }

    private static IEnumerable<string> HowTo(
        ClipRail rail, ImmutableArray<DrillingHole> holes, string edge, string? remark, LengthNotation notation)
    {
        if (remark is not null)
        {
            yield return remark;
        }

        yield return $"Cut along the edge. Offer up the bent tube, mark on the rail where the edge lies ({edge}), tape the strip down "
            + $"with its edge there and the line of the holes where the fasteners go, and punch every cross. {Drill(rail, notation)}";
        yield return $"Figures in {notation.UnitName} from the edge, every one of them, so that errors do not add up: check the last, "
            + $"{notation.WithUnit(holes[^1].Place)}, with a rule. The box is the width of a clip.";
        if (rail.Lines.Length > 1)
        {
            yield return "All holes are in one row, for clips that hold these tubes together. "
                + string.Join(" ", rail.Lines.Skip(1).Select(
                    line => $"{line.Line} runs {notation.WithUnit(line.Aside)} beside {rail.Lines[0].Line}, middle to middle"
                        + $"{(line == rail.Lines[^1] ? ":" : ";")}"))
                + " where a tube has clips of its own, move their holes aside by as much. Print the strip again when one of these lines "
                + "changes.";
        }

        foreach (var hole in rail.Holes.Select((hole, i) => (Hole: hole, Number: i + 1)).Where(one => one.Hole.IsShared))
        {
            yield return FormattableString.Invariant($"Hole {hole.Number} is shared: the clips ")
                + string.Join(" and ", hole.Hole.Clips.Select(
                    clip => FormattableString.Invariant($"{clip.Line} {clip.Number} at {notation.Figure(clip.Place)}")))
                + FormattableString.Invariant($" fall together, so one clip at {notation.Figure(hole.Hole.Place)} holds all of them, ")
                + "clear of their bends and nuts.";
        }

        for (var i = 1; i < holes.Length; i++)
        {
            var apart = holes[i].Place - holes[i - 1].Place;
            if (apart < 0.5 * (holes[i].Width + holes[i - 1].Width))
            {
                yield return FormattableString.Invariant($"Holes {i} and {i + 1} are {notation.WithUnit(apart)} apart, so their clips ")
                    + "would lie on one another: offer them up before you drill.";
            }
        }

        yield return "Before you drill look behind the rail for lines, cables and tanks, and ask the car maker's instructions where no "
            + "hole may be. Take off burrs and protect the bare edge against rust.";
    }

    private static string Drill(ClipRail rail, LengthNotation notation)
    {
        var sizes = rail.Lines.Select(line => line.Drill).Distinct().ToList();
        return sizes switch
        {
            [null] => "Drill what your clip's fastener needs: the file does not say it.",
            [{ } one] => $"Drill {notation.Size(one)}.",
            _ => "Drill for "
                + string.Join(", ", rail.Lines.Select(
                    line => $"{line.Line} {(line.Drill is { } drill ? notation.Size(drill) : "what its fastener needs")}"))
                + ".",
        };
    }

    /// <summary>Of a line that names a rail and does not lie on it.</summary>
    private static string WhyAlone(SolvedLine line, string rail, IReadOnlyCollection<SolvedLine> sharing, ClipRail? shared)
    {
        var others = string.Join(", ", sharing.Select(one => one.Template.Name).Where(name => !Same(name, line.Template.Name)));
        var why = !line.Template.HasPlace ? "it is not known where this line lies on the car"
            : shared is not null ? "this line does not run beside them there"
            : "it is not known that any of them runs beside this line on the car";
        return $"Rail {rail} is shared with {others}, but {why}: this strip has the holes of {line.Template.Name} alone, from an edge of "
            + "its own.";
    }

    /// <summary>Lines that name the rail and are not on its strip; null where all are.</summary>
    private static string? WhyWithout(string rail, IReadOnlyCollection<SolvedLine> sharing, ClipRail shared)
    {
        List<string> left =
            [.. sharing.Select(line => line.Template.Name).Except(shared.Lines.Select(line => line.Line), StringComparer.Ordinal)];
        return left.Count == 0
            ? null
            : $"Not on this strip: {string.Join(", ", left)}, of which it is not known that "
                + $"{(left.Count == 1 ? "it runs" : "they run")} along rail {rail} beside these lines.";
    }

    private static bool Same(string one, string other) => string.Equals(one, other, StringComparison.Ordinal);
}
