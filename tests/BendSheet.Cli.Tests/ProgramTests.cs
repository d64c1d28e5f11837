using System.Diagnostics;

namespace BendSheet.Cli.Tests;

/// <summary>The real program, as a process.</summary>
public class ProgramTests : AtTheTerminal
{
    private static readonly string Program = Path.Combine(AppContext.BaseDirectory, "bendsheet.dll");

    private static readonly string Finch = Path.Combine(RepositoryFolder.Path, "samples", "finch.yaml");

    [Fact]
    public async Task I_print_the_sample_twice_and_get_the_same_bytes()
    {
        foreach (var name in new[] { "first.pdf", "second.pdf" })
        {
            var (code, output, error) = await Start("dotnet", [Program, "print", Finch, "-o", Place(name)]);
            Assert.Equal(0, code);
            Assert.StartsWith($"{Place(name)}: 7 lines on ", output, StringComparison.Ordinal);
            Assert.DoesNotContain("\e", error, StringComparison.Ordinal);
        }

        Assert.Equal("first.pdf second.pdf", InTheFolder());
        var first = await File.ReadAllBytesAsync(Place("first.pdf"));
        Assert.Equal("%PDF-"u8, first.AsSpan(0, 5));
        Assert.Equal(first, await File.ReadAllBytesAsync(Place("second.pdf")));
    }

    [Fact]
    public async Task Findings_come_on_standard_error_and_figures_on_standard_output_with_the_exit_code()
    {
        var (code, output, error) = await Start("dotnet", [Program, "show", Typed(CarFiles.LegTooShort)]);
        Assert.Equal(1, code);
        Assert.StartsWith("front-left: cut ", output, StringComparison.Ordinal);
        Assert.Contains("[leg-too-short]", error, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Another_program_gets_utf8_whatever_the_terminal_has()
    {
        var (code, output, _) = await Start("dotnet", [Program, "show", Typed(CarFiles.Sound)], ("LC_ALL", "de_DE.ISO-8859-1"));
        Assert.Equal(0, code);
        Assert.Contains("1° moves B", output, StringComparison.Ordinal);
        Assert.Equal((await Run("show", Place("car.yaml"))).Output, output);
    }

    [FactOnUnix]
    public async Task A_full_disk_under_the_output_is_told_in_a_sentence()
    {
        foreach (var arguments in new[] { "show \"$2\"", "show \"$2\" --format json", "print \"$2\" -o -", "--help" })
        {
            var (code, _, error) = await Shell($"dotnet \"$1\" {arguments} > /dev/full", Typed(CarFiles.Sound));
            Assert.Equal(3, code);
            Assert.Matches("^bendsheet: the result could not be written: [^\n]+\n$", error);
        }
    }

    [FactOnUnix]
    public async Task With_both_outputs_on_a_full_disk_there_is_still_an_exit_code()
    {
        var (code, _, _) = await Shell("dotnet \"$1\" show \"$2\" > /dev/full 2> /dev/full", Typed(CarFiles.LegTooShort));
        Assert.Equal(3, code);
    }

    /// <summary>No file may grow beyond 4 KiB here, so the disk is full in the middle of the sheet.</summary>
    [FactOnUnix]
    public async Task A_disk_that_fills_up_in_the_middle_leaves_the_old_sheet_whole_and_nothing_else()
    {
        var old = await OldSheet();
        var (code, _, error) = await Shell("trap '' XFSZ; ulimit -f 8; exec dotnet \"$1\" print \"$2\"", Typed(CarFiles.Sound));
        Assert.Equal(3, code);
        Assert.Equal($"bendsheet: {Place("car.pdf")} was not written: the file is larger than this place takes\n", error);
        Assert.Equal(old, await File.ReadAllBytesAsync(Place("car.pdf")));
        Assert.Equal("car.pdf car.yaml", InTheFolder());
    }

    [FactOnUnix]
    public async Task A_closed_standard_output_is_said_on_standard_error()
    {
        foreach (var arguments in new[] { "show \"$2\"", "print \"$2\" -o -", "--help" })
        {
            var (code, _, error) = await Shell($"dotnet \"$1\" {arguments} >&-", Typed(CarFiles.Sound));
            Assert.Equal(3, code);
            Assert.Matches("^bendsheet: the result could not be written: [^\n]+\n$", error);
        }

        Assert.Equal(CarFiles.Sound, await File.ReadAllTextAsync(Place("car.yaml")));
    }

    /// <summary>
    /// One wins, whoever it is: the others say that the file is there. All end, nothing else is left, and the file is whole.
    /// </summary>
    [Fact]
    public async Task Of_four_that_start_one_file_at_once_one_wins()
    {
        var ran = await Task.WhenAll(Enumerable.Range(0, 4).Select(_ => Start("dotnet", [Program, "start", Place("car.yaml")])));
        Assert.Equal("0 3 3 3", string.Join(' ', ran.Select(one => one.Code).Order()));
        Assert.All(ran.Where(one => one.Code != 0), one => Assert.Contains("it is there already", one.Error, StringComparison.Ordinal));
        Assert.Equal("car.yaml", InTheFolder());
        Assert.Equal((await Run("start", "-")).Output, await File.ReadAllTextAsync(Place("car.yaml")));
    }

    private static Task<(int Code, string Output, string Error)> Shell(string line, string file) =>
        // Memory that is set up as a file would fall under the limit of the file size.
        Start("sh", ["-c", line, "sh", Program, file], ("DOTNET_EnableWriteXorExecute", "0"));

    private static async Task<(int Code, string Output, string Error)> Start(
        string program, string[] args, params (string Name, string Value)[] environment)
    {
        var start = new ProcessStartInfo(program, args)
        {
            UseShellExecute = false,
            RedirectStandardOutput = true,
            RedirectStandardError = true,
            StandardOutputEncoding = System.Text.Encoding.UTF8,
            StandardErrorEncoding = System.Text.Encoding.UTF8,
        };
        foreach (var (name, value) in environment)
        {
            start.Environment[name] = value;
        }

        using var process = Process.Start(start)!;
        var output = process.StandardOutput.ReadToEndAsync();
        var error = process.StandardError.ReadToEndAsync();
        await process.WaitForExitAsync();
        return (process.ExitCode, await output, await error);
    }
}

/// <summary>A test that needs a shell and a device that is always full.</summary>
public sealed class FactOnUnixAttribute : FactAttribute
{
    public FactOnUnixAttribute()
    {
        if (!File.Exists("/dev/full"))
        {
            Skip = "there is no /dev/full on this system";
        }
    }
}
