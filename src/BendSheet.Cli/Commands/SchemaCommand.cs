using System.CommandLine;
using BendSheet.Cli.Output;

namespace BendSheet.Cli.Commands;

/// <summary><c>bendsheet schema</c>: the format for an editor.</summary>
internal sealed class SchemaCommand : ExampleCommand
{
    private readonly Option<string?> _output = new("--output", "-o")
    {
        Description = "The file to write, for an editor to read. One that is there already is never overwritten.",
        HelpName = "FILE",
    };

    public SchemaCommand(Surroundings surroundings)
        : base(
            "schema",
            "Prints the format of the file as a JSON Schema, so that an editor completes words and marks wrong ones while you type.",
            ($"bendsheet schema -o {FormatSchema.FileName}", $"Put `{FormatSchema.Modeline}` at the top of your file beside it."))
    {
        Add(_output);
        SetAction(parsed => NewFile.Write(
            parsed.GetValue(_output) ?? NewFile.StandardOutput, FormatSchema.Write(),
            $"put `{FormatSchema.Modeline}` at the top of a file beside it.", surroundings));
    }

    public override bool IsOfTheWork => false;
}
