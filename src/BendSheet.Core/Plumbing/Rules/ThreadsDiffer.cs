using BendSheet.Core.Findings;
using BendSheet.Core.Fittings;
using BendSheet.Core.Units;

namespace BendSheet.Core.Plumbing.Rules;

/// <summary>A nut of another thread goes in a turn or two, and then both threads are gone.</summary>
public static class ThreadsDiffer
{
    /// <summary>The rule.</summary>
    public static Rule Rule { get; } = new(
        "threads-differ", RuleSubject.Making, "A nut whose thread is not the port's does not go in, or strips after a turn.");

    /// <summary>
    /// An error where both threads were typed, at the port. Where the fitting does not say its thread, or one comes from a publication and
    /// nobody typed it, a warning.
    /// </summary>
    public static IEnumerable<Finding> Check(PortUse use)
    {
        var (port, end) = (use.Place.Port.Spec, use.End);
        if (port.Thread is not { } thread || Mates(port.Seat, end.Seats) == false)
        {
            yield break;
        }

        if (end.Spec.Thread is { } own)
        {
            if (!own.Fits(thread))
            {
                yield return Typed(use, own, thread);
            }
        }
        else if (port.Seat is { } seat && end.Fitting is { } fitting && end.Tube is { } tube
            && StandardPort.Find(seat, tube.OutsideDiameter).ToList() is { Count: > 0 } usual
            && !usual.Exists(row => row.Thread.Fits(thread)))
        {
            var sources = string.Join(
                "; ",
                usual.Select(row => $"{row.Thread.InWords} ({row.Source.InWords}{(row.Source.MustBeChecked ? ": check" : string.Empty)})"));
            yield return Rule.Warning(
                use.Position,
                $"{use.Place.InWords} has thread {thread.InWords}, and nuts for tube of {Size(tube.OutsideDiameter)} on {seat.InWords()} "
                    + $"have {sources}: if yours has {thread.InWords}, say so with `thread: {thread.InWords}` in fitting {fitting.Name}; "
                    + "otherwise change the port or the tube");
        }
    }

    private static Finding Typed(PortUse use, ScrewThread own, ScrewThread thread)
    {
        var published = use.Place.Port.Spec.Source ?? use.End.Spec.Source;
        var message =
            $"{use.End.Name} has thread {own.InWords}, and {use.Place.InWords} has {thread.InWords}: one does not go into the other; "
            + $"use {(use.End.Fitting is null ? "an end" : "a nut")} with {thread.InWords}, or an adapter between them";
        return published is null
            ? Rule.Error(use.Position, message)
            : Rule.Warning(use.Position, $"{message} ({published.InWords}: check, or type the thread that the part has)");
    }

    /// <summary>Whether the seats match; null where one is not known. Where they do not, that is enough to say of one place.</summary>
    private static bool? Mates(Seat? seat, IReadOnlyList<Seat>? own) => seat is { } known && own is not null ? own.Contains(known) : null;

    private static string Size(Length size) => new LengthNotation(Imperial: true, 64).Size(size);
}
