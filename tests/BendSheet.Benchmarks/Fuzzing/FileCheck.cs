using System.Diagnostics;
using System.Globalization;
using System.Text;
using System.Text.Json;
using BendSheet.Cli.Input;
using BendSheet.Cli.Output;
using BendSheet.Core.Car;
using BendSheet.Core.Findings;
using BendSheet.Files.Reading;

namespace BendSheet.Benchmarks.Fuzzing;

/// <summary>
/// Takes one typed file after the other all the way: the findings, the figures, the stock, and of some the table, the commands and the
/// sheets.
/// </summary>
/// <param name="folder">To print in.</param>
internal sealed class FileCheck(string folder)
{
    // Odd, so that files of every kind come by: their kind goes by the number as well.
    private const int EveryAsTable = 5;
    private const int EveryThroughCommands = 51;
    private const int EveryPrinted = 501;

    /// <summary>Files with sheets; of these some are printed.</summary>
    public int Printable { get; private set; }

    /// <summary>Files without a mistake.</summary>
    public int Sound { get; private set; }

    /// <summary>Lines solved.</summary>
    public int Lines { get; private set; }

    /// <summary>The longest that one command took so far, of processor time: what a person waits for.</summary>
    public TimeSpan Longest { get; private set; }

    /// <summary>How often a file is taken: some go through the commands as well.</summary>
    public static int Times(int number) => 1 + (number % EveryThroughCommands == 0 ? 3 : 0) + (number % EveryPrinted == 0 ? 1 : 0);

    /// <summary>What is wrong with how a file is taken, in words; null where nothing is.</summary>
    /// <param name="typed">The file.</param>
    /// <param name="number">Of the file: what is done with some is done with the same ones in every run.</param>
    public string? WhatIsWrong(string typed, int number)
    {
        var bytes = Encoding.UTF8.GetBytes(typed);
        var (file, plan, json, stock) = Timed(() => Solved(bytes));
        Sound += plan.Verdict == Verdict.Good ? 1 : 0;
        Lines += plan.Lines.Length;
        Printable += plan.Printable.Any() ? 1 : 0;
        return plan.Stock.Findings.Select(finding => WhatIsWrong(finding, file)).FirstOrDefault(wrong => wrong is not null)
            ?? WhatIsWrong(json) ?? WhatIsWrong(stock)
            ?? (number % EveryAsTable == 0 && AsTable(plan).Contains("NaN", StringComparison.Ordinal) ? "NaN in the table" : null)
            ?? (number % EveryThroughCommands == 0 ? ThroughCommands(bytes, plan, json, stock) : null)
            ?? (number % EveryPrinted == 0 && plan.Printable.Any() ? Printed(bytes, plan) : null);
    }

    private static (TemplateFile File, CarPlan Plan, string Json, string Stock) Solved(byte[] typed)
    {
        var file = TypedFile.Read(TypedFile.StandardInput, () => new MemoryStream(typed));
        var plan = CarPlan.Of(file, []);
        return (file, plan, SolvedJson.Write(plan), StockJson.Write(plan));
    }

    private static string AsTable(CarPlan plan) => LineTable.Write(plan, new View(Width: null, Drawing: false));

    private static string? WhatIsWrong(Finding finding, TemplateFile file)
    {
        var (line, column) = (finding.Position.Line, finding.Position.Column);
        var isInside = line >= 1 && line <= file.Source.Count && column >= 1 && column <= file.Source[line].Length + 1;
        return !isInside ? $"a finding outside of the file: {finding}"
            : finding.Message.Any(char.IsControl) ? $"a control character in a finding: {finding}"
            : finding.Message.Contains("NaN", StringComparison.Ordinal) || finding.Message.Contains('∞', StringComparison.Ordinal)
                ? $"no figure in a finding: {finding}"
            : null;
    }

    private static string? WhatIsWrong(string json)
    {
        using var document = JsonDocument.Parse(json);
        return json.Contains("NaN", StringComparison.Ordinal) || json.Contains("Infinity", StringComparison.Ordinal)
            ? "no figure in JSON"
            : null;
    }

    private string? ThroughCommands(byte[] typed, CarPlan plan, string json, string stock)
    {
        var (checkCode, _) = Command(typed, "check", "-");
        var (showCode, shown) = Command(typed, "show", "-", "--format", "json");
        var (stockCode, stocked) = Command(typed, "stock", "-", "--format", "json");
        return checkCode is not (0 or 1 or 2) ? $"check: exit code {checkCode}"
            : showCode != ExitCodes.For(plan.Verdict) || !string.Equals(shown, json, StringComparison.Ordinal) ? "show differs"
            : stockCode != ExitCodes.For(plan.Stock.Verdict) || !string.Equals(stocked, stock, StringComparison.Ordinal) ? "stock differs"
            : null;
    }

    private (int Code, string Output) Command(byte[] typed, params string[] args)
    {
        using var output = new StringWriter { NewLine = "\n" };
        using var error = new StringWriter { NewLine = "\n" };
        var surroundings = new Surroundings(output, error, () => new MemoryStream(typed), () => Stream.Null, Colour: false);
        return (Timed(() => Cli.CommandLine.RunAsync(args, surroundings).GetAwaiter().GetResult()), output.ToString());
    }

    private T Timed<T>(Func<T> command)
    {
        var before = Environment.CpuUsage.TotalTime;
        var result = command();
        Longest = TimeSpan.FromTicks(Math.Max(Longest.Ticks, (Environment.CpuUsage.TotalTime - before).Ticks));
        return result;
    }

    private string? Printed(byte[] typed, CarPlan plan)
    {
        var path = Path.Combine(folder, $"printed-{Environment.CurrentManagedThreadId.ToString(CultureInfo.InvariantCulture)}.pdf");
        var (code, _) = Command(typed, "print", "-", "--full-size", "all", "-o", path);
        if (code != ExitCodes.For(plan.Verdict))
        {
            return $"print: exit code {code}";
        }

        try
        {
            using var check = Process.Start(
                new ProcessStartInfo("qpdf", ["--check", path])
                {
                    RedirectStandardOutput = true,
                    RedirectStandardError = true,
                    UseShellExecute = false,
                })!;
            var said = check.StandardOutput.ReadToEnd() + check.StandardError.ReadToEnd();
            check.WaitForExit();
            return check.ExitCode == 0 ? null : $"qpdf: {said}";
        }
        catch (System.ComponentModel.Win32Exception)
        {
            // Not on this machine.
            return null;
        }
    }
}
