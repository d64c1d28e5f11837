using System.CommandLine;
using BendSheet.Cli.Output;
using BendSheet.Core.Car;

namespace BendSheet.Cli.Commands;

/// <summary><c>bendsheet show</c>: the figures on the screen, or for another program.</summary>
internal static class ShowCommand
{
    private static readonly (string Word, Func<CarPlan, string> Write)[] Formats =
    [
        ("table", LineTable.Write),
        ("json", SolvedJson.Write),
        ("csv", SolvedCsv.Write),
        ("rows", SolvedRows.Write),
    ];

    private static readonly (string Word, Func<CarPlan, string> Write)[] PartsFormats =
    [
        ("table", PartsTree.Write),
        ("json", PartsJson.Write),
    ];

    public static Command Create(Surroundings surroundings)
    {
        var file = FileOptions.File();
        var line = FileOptions.Line();
        var format = new Option<string>("--format")
        {
            Description = "How to show it: table, rounded as on the sheet; json or csv, unrounded millimetres and degrees; or rows, each "
                + "route as rows to paste into a file.",
            HelpName = string.Join('|', Formats.Select(known => known.Word)),
            DefaultValueFactory = _ => Formats[0].Word,
        };
        format.AcceptOnlyFromAmong([.. Formats.Select(known => known.Word)]);
        var parts = new Option<bool>("--parts")
        {
            Description = "Instead of the lines, the way from each master cylinder through lines, hoses and parts to its wheels; as a "
                + "table or json.",
        };
        var command = new ExampleCommand(
            "show",
            "Shows marks, angles, lengths and check distances of every line.",
            ("bendsheet show finch.yaml --line front-left", "One line, as a table."),
            ("bendsheet show finch.yaml --format json > finch.json", "All figures, unrounded, for another program."),
            ("bendsheet show finch.yaml --parts", "The way from each master cylinder through lines, hoses and parts to its wheels."))
        {
            file,
            line,
            format,
            parts,
        };
        command.Validators.Add(parsed =>
        {
            if (parsed.GetValue(parts)
                && parsed.GetValue(format) is { } word
                && !PartsFormats.Any(known => string.Equals(known.Word, word, StringComparison.Ordinal)))
            {
                parsed.AddError($"--parts is shown as {string.Join(" or ", PartsFormats.Select(known => known.Word))}, not as {word}.");
            }
        });
        command.SetAction(parsed =>
        {
            var plan = FileOptions.ReadAndReport(parsed, file, line, surroundings);
            var word = parsed.GetRequiredValue(format);
            var write = (parsed.GetValue(parts) ? PartsFormats : Formats)
                .First(known => string.Equals(known.Word, word, StringComparison.Ordinal)).Write;
            surroundings.Output.Write(surroundings.Drawing && write == LineTable.Write ? LineTable.WithPictures(plan) : write(plan));
            return ExitCodes.For(plan.Verdict);
        });
        return command;
    }
}
