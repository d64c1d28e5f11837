using System.CommandLine;
using BendSheet.Cli.Input;
using BendSheet.Cli.Output;
using BendSheet.Core.Car;

namespace BendSheet.Cli.Commands;

/// <summary><c>bendsheet stock</c>: will the tube do, how is it cut, and what has to be bought?</summary>
internal static class StockCommand
{
    private static readonly (string Word, Func<CarPlan, string> Write)[] Formats =
    [
        ("table", StockTable.Write),
        ("json", StockJson.Write),
        ("csv", StockCsv.Write),
    ];

    public static Command Create(Surroundings surroundings)
    {
        var file = FileOptions.File();
        var format = new Option<string>("--format")
        {
            Description = "How to show it: table, rounded; or json or csv, unrounded millimetres.",
            HelpName = string.Join('|', Formats.Select(known => known.Word)),
            DefaultValueFactory = _ => Formats[0].Word,
        };
        format.AcceptOnlyFromAmong([.. Formats.Select(known => known.Word)]);
        var command = new ExampleCommand(
            "stock",
            "Adds up the tube that is still needed, plans how the rolls are cut, and lists what has to be bought.",
            ("bendsheet stock finch.yaml", "Before a cut: the remaining need against the remaining rolls."),
            ("bendsheet stock finch.yaml --format csv > shopping.csv", "Cutting plan and shopping list for a spreadsheet."))
        {
            file,
            format,
        };
        command.SetAction(parsed =>
        {
            var typed = TypedFile.Read(parsed.GetRequiredValue(file), surroundings.StandardInput);
            var plan = CarPlan.Of(typed, []);
            surroundings.Error.Write(FindingText.Write(plan.Stock.Findings, typed.Source, surroundings.Colour));
            var word = parsed.GetRequiredValue(format);
            surroundings.Output.Write(Formats.First(known => string.Equals(known.Word, word, StringComparison.Ordinal)).Write(plan));
            return ExitCodes.For(plan.Stock.Verdict);
        });
        return command;
    }
}
