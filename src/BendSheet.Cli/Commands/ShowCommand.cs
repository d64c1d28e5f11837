using System.Collections.Immutable;
using System.CommandLine;
using BendSheet.Cli.Output;
using BendSheet.Core.Findings;

namespace BendSheet.Cli.Commands;

/// <summary><c>bendsheet show</c>: the figures on the screen, or for another program.</summary>
internal sealed class ShowCommand : CarCommand
{
    private static readonly FormatOption.Format[] Formats =
    [
        new("table", LineTable.Write),
        new("json", (plan, _) => SolvedJson.Write(plan)),
        new("csv", (plan, _) => SolvedCsv.Write(plan)),
        new("rows", (plan, _) => SolvedRows.Write(plan)),
    ];

    private static readonly FormatOption.Format[] PartsFormats =
    [
        new("table", (plan, view) => Wrapped.Text(PartsTree.Write(plan), view.Width)),
        new("json", (plan, _) => PartsJson.Write(plan)),
    ];

    private readonly FormatOption _format = new(
        Formats,
        "How to show it: table, rounded as on the sheet; json or csv, unrounded millimetres and degrees; or rows, each route as rows to "
            + "paste into a file.");

    private readonly Option<bool> _parts = new("--parts")
    {
        Description = "Instead of the lines, the way from each master cylinder through lines, hoses and parts to its wheels; as a "
            + "table or json.",
    };

    private readonly Option<bool> _wide = FormatOption.Wide();

    public ShowCommand(Surroundings surroundings)
        : base(
            surroundings,
            "show",
            "Shows marks, angles, lengths and check distances of every line.",
            byLine: true,
            ("bendsheet show finch.yaml --line front-left", "One line, as a table."),
            ("bendsheet show finch.yaml --format json > finch.json", "All figures, unrounded, for another program."),
            ("bendsheet show finch.yaml --parts", "The way from each master cylinder through lines, hoses and parts to its wheels."))
    {
        Add(_format);
        Add(_parts);
        Add(_wide);
        AddWatch();
        Validators.Add(parsed =>
        {
            if (parsed.GetValue(_parts)
                && parsed.GetValue(_format) is { } word
                && !PartsFormats.Any(known => string.Equals(known.Word, word, StringComparison.Ordinal)))
            {
                parsed.AddError(
                    $"--parts is shown as {string.Join(" or ", PartsFormats.Select(known => known.Word))}, not as {word}.");
            }
        });
    }

    protected override int Write(Asked asked, ImmutableArray<Finding> findings, Surroundings surroundings)
    {
        var formats = asked.Options.GetValue(_parts) ? PartsFormats : Formats;
        var view = View.On(surroundings, asked.Options.GetValue(_wide));
        surroundings.Output.Write(_format.Chosen(asked.Options, formats).Write(asked.Plan, view));
        return ExitCodes.For(asked.Plan.Verdict);
    }
}
