using System.Collections.Immutable;
using BendSheet.Core.Findings;
using BendSheet.Core.Plumbing;
using BendSheet.Core.Sheet;
using BendSheet.Core.Stock;
using BendSheet.Core.Units;

namespace BendSheet.Cli.Input;

/// <summary>A solved file, held against the tube and the hardware that are there.</summary>
/// <param name="Solved">From its bytes to its solved lines.</param>
/// <param name="Stock">Whether the tube will do.</param>
/// <param name="Shopping">What to buy.</param>
/// <param name="Findings">All of them, in the order of the file.</param>
public sealed record StockedFile(SolvedFile Solved, StockPlan Stock, ShoppingList Shopping, ImmutableArray<Finding> Findings)
{
    /// <summary>What the findings ask the program to end with.</summary>
    public int ExitCode => ExitCodes.Of(Findings);

    /// <summary>Solved lines → stock → shopping list.</summary>
    /// <param name="solved">All lines of the file.</param>
    public static StockedFile Of(SolvedFile solved)
    {
        var more = PlumbingNeeds.Of(solved.Network, solved.File.Notation)
            .Select(need => new ShoppingItem(need.Name, string.Empty, need.Count, need.UsedAt) { Have = Math.Min(need.Have, need.Count) });
        // Of a wrong file nothing is reckoned: its lines are left out, and what is there would look like enough.
        var isWrong = solved.ExitCode == ExitCodes.WrongInput;
        var stock = StockPlan.Of(solved.Lines, solved.RoughLines, isWrong ? Stores.Empty : solved.File.Stores);
        var shopping = ShoppingList.Of(solved.Lines, solved.RoughLines, stock, isWrong ? [] : solved.File.Stores.Have, isWrong ? [] : more, solved.File.Notation);
        return new(
            solved,
            stock,
            shopping,
            [.. solved.Findings.Concat(stock.Findings).Concat(shopping.Findings).OrderBy(finding => finding.Position.Line).ThenBy(finding => finding.Position.Column)]);
    }

    /// <summary>What the cover says of it.</summary>
    public StockContent Cover(LengthNotation? notation = null) =>
        StockWriter.Of(Solved.File.Project, Solved.Lines, Solved.RoughLines, Stock, Shopping, notation ?? Solved.File.Notation);
}
