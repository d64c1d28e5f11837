using System.Collections.Immutable;
using System.Globalization;
using BendSheet.Core.Bench;
using BendSheet.Core.Findings;
using BendSheet.Core.Templates;
using BendSheet.Core.Units;

namespace BendSheet.Core.Stock;

/// <summary>
/// What to buy for the lines that are not made yet, less what is on hand. The clips of a rough line are not counted: nobody knows
/// yet where it has straights for them.
/// </summary>
/// <param name="Items">Hardware of the ends in the order of the file, clips, tube, then whatever else was handed in.</param>
/// <param name="Findings">What is on hand and leads to nothing, or to several things.</param>
public sealed record ShoppingList(ImmutableArray<ShoppingItem> Items, ImmutableArray<Finding> Findings)
{
    /// <summary>The list of a file.</summary>
    /// <param name="lines">With a template.</param>
    /// <param name="rough">Without one: their ends need hardware as well.</param>
    /// <param name="stock">Of the same lines.</param>
    /// <param name="have">What is on hand, as typed.</param>
    /// <param name="more">What the car needs beside its lines: parts, hoses, plugs.</param>
    /// <param name="notation">How sizes are written.</param>
    public static ShoppingList Of(
        ImmutableArray<SolvedLine> lines,
        ImmutableArray<RoughLine> rough,
        StockPlan stock,
        ImmutableArray<InTheDrawer> have,
        IEnumerable<ShoppingItem> more,
        LengthNotation notation)
    {
        // Tube that is there is typed in `stock`, where its length counts: `have` takes none of it off.
        var hardware = Hardware(lines, rough, made: false, notation).ToList();
        var used = Hardware(lines, rough, made: true, notation).ToList();
        var list = OnHand.Subtract([.. hardware, .. more], used, have);
        return list with { Items = list.Items.InsertRange(hardware.Count, stock.Tubes.SelectMany(tube => Tube(tube, notation))) };
    }

    /// <summary>What is slid on, and clips, of the lines that are made or of those that are not.</summary>
    private static IEnumerable<ShoppingItem> Hardware(
        ImmutableArray<SolvedLine> lines, ImmutableArray<RoughLine> rough, bool made, LengthNotation notation)
    {
        var some = lines.Where(line => line.Template.Made == made).ToList();
        var ends = some.Select(line => (line.Template.Name, line.Template.At, line.Template.From, line.Template.To))
            .Concat(rough.Where(line => line.Made == made).Select(line => (line.Name, line.At, line.From, line.To)))
            .InFileOrder(line => line.At)
            .SelectMany(line => new[] { (Line: line.Name, Letter: "A", End: line.From), (Line: line.Name, Letter: "B", End: line.To) });
        var slid = ends.SelectMany(
            end => end.End.Fitting?.Hardware.Select(
                piece => new Needed(piece.Name, $"{end.End.Fitting.Name}, {notation.Size(piece.Length)}", 1, end.Line, end.Letter)) ?? []);
        var clips = some.Where(line => line.Clips is { Clips.IsEmpty: false })
            .Select(line => new Needed("clip", ClipSize(line, notation), line.Clips!.Clips.Length, line.Template.Name, null));
        return Needed.Joined(slid.Concat(clips));
    }

    private static string ClipSize(SolvedLine line, LengthNotation notation) =>
        $"for {notation.Size(line.Template.Tube.OutsideDiameter)} tube"
            + (line.Template.Clips?.Hole is { } hole ? $", hole {notation.Size(hole)}" : string.Empty);

    /// <summary>New rolls; where no roll is typed, the length alone.</summary>
    private static IEnumerable<ShoppingItem> Tube(TubePlan tube, LengthNotation notation)
    {
        var size = TubeWords.InWords(tube.Tube, notation);
        var lines = tube.Need.Pieces.Where(piece => !piece.IsPractice).Select(piece => piece.Name);
        if (tube.Plan is null && tube.Need.Total > Length.Zero)
        {
            yield return new("tube", string.Empty, $"{size}, {notation.WithUnit(tube.Need.Total)} in all", 1, [.. lines]);
        }
        else if (tube.Plan is { Bought: > 0, ToBuy: { } roll } plan)
        {
            var from = plan.Rolls.Where(cuts => cuts.IsBought).SelectMany(cuts => cuts.Cuts)
                .Where(cut => !cut.Piece.IsPractice)
                .Select(cut => cut.Piece.Name);
            yield return new(
                "tube",
                string.Empty,
                $"{size}, {roll.KindInWords} of {notation.Size(roll.Length)}",
                plan.Bought,
                [.. from.DefaultIfEmpty(plan.ForSpare > 0 ? "spare" : "practice pieces")]);
        }

        if (tube.Plan is { TooLong.IsEmpty: false } tooShort)
        {
            var longest = tooShort.TooLong.Max(piece => piece.Length);
            yield return new(
                "tube",
                string.Empty,
                $"{size}, at least {notation.WithUnit(longest)} in one piece",
                tooShort.TooLong.Length,
                [.. tooShort.TooLong.Select(piece => piece.Name)]);
        }
    }

    /// <summary>A number of one thing at one place, before equal things are added up.</summary>
    /// <remarks>At one end of the line, where <paramref name="End"/> has its letter.</remarks>
    private sealed record Needed(string Name, string Specification, int Count, string Line, string? End)
    {
        /// <summary>In the order in which each thing comes first.</summary>
        public static IEnumerable<ShoppingItem> Joined(IEnumerable<Needed> all) =>
            all.GroupBy(one => (one.Name, one.Specification)).Select(same => new ShoppingItem(
                same.Key.Name,
                string.Empty,
                same.Key.Specification,
                same.Sum(one => one.Count),
                [.. same.GroupBy(one => one.Line, StringComparer.Ordinal).Select(line => Place([.. line]))]));

        private static string Place(Needed[] onLine) => onLine.Sum(one => one.Count) is var count and > 1
            ? string.Create(CultureInfo.InvariantCulture, $"{onLine[0].Line} ({count})")
            : onLine[0].End is { } end ? $"{onLine[0].Line} {end}" : onLine[0].Line;
    }
}
