using System.Collections.Immutable;
using System.CommandLine;
using BendSheet.Cli.Output;
using BendSheet.Core.Findings;

namespace BendSheet.Cli.Commands;

/// <summary><c>bendsheet stock</c>: will the tube do, how is it cut, and what has to be bought?</summary>
internal sealed class StockCommand : CarCommand
{
    private static readonly FormatOption.Format[] Formats =
    [
        new("table", StockTable.Write),
        new("json", (plan, _) => StockJson.Write(plan)),
        new("csv", (plan, _) => StockCsv.Write(plan)),
    ];

    private readonly FormatOption _format = new(Formats, "How to show it: table, rounded; or json or csv, unrounded millimetres.");

    private readonly Option<bool> _wide = FormatOption.Wide();

    public StockCommand(Surroundings surroundings)
        : base(
            surroundings,
            "stock",
            "Adds up the tube that is still needed, plans how the rolls are cut, and lists what has to be bought.",
            byLine: false,
            ("bendsheet stock finch.yaml", "Before a cut: the remaining need against the remaining rolls."),
            ("bendsheet stock finch.yaml --format csv > shopping.csv", "Cutting plan and shopping list for a spreadsheet."))
    {
        Add(_format);
        Add(_wide);
    }

    protected override IEnumerable<Finding> Findings(Asked asked) => asked.Plan.Stock.Findings;

    protected override int Write(Asked asked, ImmutableArray<Finding> findings, Surroundings surroundings)
    {
        var view = View.On(surroundings, asked.Options.GetValue(_wide));
        surroundings.Output.Write(_format.Chosen(asked.Options, Formats).Write(asked.Plan, view));
        return ExitCodes.For(asked.Plan.Stock.Verdict);
    }
}
