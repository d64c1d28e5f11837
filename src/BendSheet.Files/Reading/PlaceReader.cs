using System.Collections.Immutable;
using System.Globalization;
using BendSheet.Core.Findings;
using BendSheet.Core.Survey;
using BendSheet.Core.Templates;
using BendSheet.Files.Yaml;

namespace BendSheet.Files.Reading;

/// <summary>
/// Reads the places of a line that a tape can be held to: A or 0, its corners by the numbers of their bends, B or one more than there are
/// bends. Null after findings.
/// </summary>
/// <param name="route">Of the line.</param>
/// <param name="piece">What is measured, in a sentence: <c>the finished piece</c>.</param>
/// <param name="context">For findings.</param>
internal sealed class PlaceReader(Route route, string piece, FileContext context)
{
    private int Last => route.Bends.Length + 1;

    /// <summary>A tape is held to the backs of bends, as on a tube, and not to their corners.</summary>
    public bool ToBacks { get; init; }

    /// <summary>The bends that are made; none means all.</summary>
    public ImmutableArray<int> Bent { get; init; } = [];

    /// <summary>A place: 0 is end A, then the corners, then end B.</summary>
    public int? Place(string text, SourcePosition at)
    {
        if (text is "A" or "a" or "0")
        {
            return 0;
        }

        if (text is "B" or "b")
        {
            return EndB(at);
        }

        if (!int.TryParse(text, NumberStyles.None, CultureInfo.InvariantCulture, out var number) || number > Last)
        {
            var word = ToBacks ? "bend" : "corner";
            var numbers = route.Bends.Length switch
            {
                0 => $"the line has no {word}",
                1 => $"or 1 for its only {word}",
                _ => FormattableString.Invariant($"or the number of a {word}, 1 to {route.Bends.Length}"),
            };
            context.Report(TapedRules.NoDistance.Error(at, $"{AsTyped.Show(text)} is no place on {piece}: write A or B, {numbers}"));
            return null;
        }

        return number == Last ? EndB(at) : ToBacks ? Made(number, at) : Corner(number, at);
    }

    /// <summary>A bend of a tube by its number, whose angle is measured.</summary>
    public int? Angle(string text, SourcePosition at)
    {
        if (Bend(text, at) is not { } number || !IsAmongBent(number, at))
        {
            return null;
        }

        if (!route.Bends[number - 1].FromTangent)
        {
            return number;
        }

        context.Report(TapedRules.NoDistance.Error(
            at,
            FormattableString.Invariant($"bend {number} is part of a coil, which no protractor can be held to: ")
                + "measure distances to A, B or another bend"));
        return null;
    }

    /// <summary>A bend of a tube by its number.</summary>
    public int? Bend(string text, SourcePosition at)
    {
        if (int.TryParse(text, NumberStyles.None, CultureInfo.InvariantCulture, out var number) && number >= 1 && number < Last)
        {
            return number;
        }

        context.Report(TapedRules.NoDistance.Error(
            at,
            $"{AsTyped.Show(text)} is no bend of {piece}: "
                + (Last == 1 ? "it has none" : FormattableString.Invariant($"its bends have the numbers 1 to {Last - 1}"))));
        return null;
    }

    private int? EndB(SourcePosition at)
    {
        if (Bent.IsEmpty || Bent.Length == route.Bends.Length)
        {
            return Last;
        }

        context.Report(FileRules.OutOfPlace.Error(
            at, "end B has no place of its own before all bends are made: measure between A and the bends that `bent` names"));
        return null;
    }

    private int? Made(int number, SourcePosition at)
    {
        if (route.Bends[number - 1].FromTangent)
        {
            context.Report(TapedRules.NoDistance.Error(
                at,
                FormattableString.Invariant($"bend {number} is part of a coil, which has no back of its own: ")
                    + "measure to A, B or another bend"));
            return null;
        }

        return IsAmongBent(number, at) ? number : null;
    }

    private bool IsAmongBent(int number, SourcePosition at)
    {
        if (Bent.IsEmpty || Bent.Contains(number))
        {
            return true;
        }

        context.Report(FileRules.OutOfPlace.Error(
            at, FormattableString.Invariant($"bend {number} is not among those that `bent` names: add it there, or take this out")));
        return false;
    }

    private int? Corner(int number, SourcePosition at)
    {
        if (route.Bends[number - 1] is { HasCorner: true, FromTangent: false })
        {
            return number;
        }

        context.Report(TapedRules.NoDistance.Error(
            at,
            FormattableString.Invariant($"bend {number} has no corner that a tape could be held to: a U-bend or a coil has none; ")
                + "measure to A, B or another corner"));
        return null;
    }

    /// <summary>Two different places, in the order in which they were typed.</summary>
    public (int From, int To)? Pair(string from, string to, SourcePosition fromAt, SourcePosition toAt)
    {
        var (first, second) = (Place(from, fromAt), Place(to, toAt));
        if (first is not { } start || second is not { } end)
        {
            return null;
        }

        if (start == end)
        {
            context.Report(TapedRules.NoDistance.Error(
                toAt, $"from {AsTyped.Show(to)} to itself there is no distance: write two different places"));
            return null;
        }

        return (start, end);
    }
}
