using System.Diagnostics;
using System.Globalization;
using System.Text;
using System.Text.Json;
using BendSheet.Cli.Output;
using BendSheet.Core.Car;
using BendSheet.Core.Findings;
using BendSheet.Files.Reading;
using BendSheet.Pdf;
using BendSheet.Sheets;
using BendSheet.Sheets.FullSize;

namespace BendSheet.Benchmarks.Fuzzing;

/// <summary>
/// Takes typed files all the way: the findings, the figures, the stock, and of some the sheets. Whatever was typed, there is no exception,
/// every finding lies inside the file, what is written can be read, and it takes neither long nor much.
/// </summary>
internal sealed class FuzzRun(int seed, int first, int count)
{
    private const int EveryThroughCommands = 50;
    private const int EveryPrinted = 500;

    /// <summary>Of processor time, so that other programs on the machine do not count; and not while the run warms up.</summary>
    private static readonly TimeSpan Longest = TimeSpan.FromSeconds(1);
    private const int WarmUp = 300;

    private const long MostBytes = 700L * 1024 * 1024;

    private readonly List<string> _failures = [];
    private int _printed;
    private int _sound;
    private int _lines;

    /// <summary>Runs <c>fuzz [COUNT] [SEED] [FIRST]</c>; the number of files that something is wrong with, at most 100.</summary>
    /// <param name="args">Behind <c>fuzz</c>.</param>
    public static int Run(string[] args)
    {
        int Number(int at, int otherwise) => args.Length > at ? int.Parse(args[at], CultureInfo.InvariantCulture) : otherwise;
        return new FuzzRun(Number(1, 20261126), Number(2, 0), Number(0, 30_000)).Run();
    }

    private int Run()
    {
        var folder = Directory.CreateDirectory(Path.Combine(Path.GetTempPath(), "bendsheet-fuzz")).FullName;
        var samples = Directory.GetFiles("samples", "*.yaml").Order(StringComparer.Ordinal);
        var files = new FuzzedFiles(seed, [.. samples.Select(File.ReadAllText)]);

        // A stack that overflows ends the process at once: which file it was is on the disk then.
        using var current = File.OpenHandle(Path.Combine(folder, "current"), FileMode.Create, FileAccess.Write);
        var watch = Stopwatch.StartNew();
        for (var number = first; number < first + count && _failures.Count < 100; number++)
        {
            RandomAccess.Write(current, Encoding.ASCII.GetBytes(number.ToString("D10", CultureInfo.InvariantCulture)), 0);
            var typed = files[number];
            if (WhatIsWrong(typed, number) is { } wrong)
            {
                var path = Path.Combine(folder, FormattableString.Invariant($"{seed}-{number}.yaml"));
                File.WriteAllText(path, typed);
                _failures.Add(wrong);
                Console.WriteLine($"{path}: {wrong}");
            }
        }

        Console.WriteLine(string.Create(
            CultureInfo.InvariantCulture,
            $"{count} files from {first} on, seed {seed}: {_failures.Count} wrong; {_sound} without a mistake, {_lines} lines solved, "
                + $"{_printed} printed; {count / watch.Elapsed.TotalSeconds:0} files a second"));
        return _failures.Count;
    }

    private string? WhatIsWrong(string typed, int number)
    {
        var (time, bytes) = (Environment.CpuUsage.TotalTime, GC.GetAllocatedBytesForCurrentThread());
        try
        {
            var wrong = Check(typed, number);
            var took = Environment.CpuUsage.TotalTime - time;
            var taken = GC.GetAllocatedBytesForCurrentThread() - bytes;
            return wrong
                ?? (took > Longest && number - first > WarmUp ? $"took {took.TotalSeconds:0.0} s of processor time"
                    : taken > MostBytes ? $"took {taken / 1024 / 1024} MB"
                    : null);
        }
        catch (Exception defect)
        {
            return defect.ToString();
        }
    }

    private string? Check(string typed, int number)
    {
        var bytes = Encoding.UTF8.GetBytes(typed);
        var file = TemplateReader.Read("-", new MemoryStream(bytes));
        var plan = CarPlan.Of(file, []);
        var (json, stock) = (SolvedJson.Write(plan), StockJson.Write(plan));
        var table = LineTable.Write(plan, new View(Width: null, Drawing: false));
        _sound += plan.Verdict == Verdict.Good ? 1 : 0;
        _lines += plan.Lines.Length;
        return plan.Stock.Findings.Select(finding => WhatIsWrong(finding, file)).FirstOrDefault(wrong => wrong is not null)
            ?? WhatIsWrong(json) ?? WhatIsWrong(stock)
            ?? (table.Contains("NaN", StringComparison.Ordinal) ? "NaN in the table" : null)
            ?? (number % EveryThroughCommands == 0 ? ThroughCommands(bytes, plan, json, stock) : null)
            ?? (plan.Printable.Any() && ++_printed % EveryPrinted == 1 ? Printed(plan) : null);
    }

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

    private static string? ThroughCommands(byte[] typed, CarPlan plan, string json, string stock)
    {
        var (checkCode, _) = Command(typed, "check", "-");
        var (showCode, shown) = Command(typed, "show", "-", "--format", "json");
        var (stockCode, stocked) = Command(typed, "stock", "-", "--format", "json");
        return checkCode is not (0 or 1 or 2) ? $"check: exit code {checkCode}"
            : showCode != ExitCodes.For(plan.Verdict) || !string.Equals(shown, json, StringComparison.Ordinal) ? "show differs"
            : stockCode != ExitCodes.For(plan.Stock.Verdict) || !string.Equals(stocked, stock, StringComparison.Ordinal) ? "stock differs"
            : null;
    }

    private static (int Code, string Output) Command(byte[] typed, params string[] args)
    {
        using var output = new StringWriter { NewLine = "\n" };
        using var error = new StringWriter { NewLine = "\n" };
        var surroundings = new Surroundings(output, error, () => new MemoryStream(typed), () => Stream.Null, Colour: false);
        return (Cli.CommandLine.RunAsync(args, surroundings).GetAwaiter().GetResult(), output.ToString());
    }

    private static string? Printed(CarPlan plan)
    {
        var notation = plan.Measured.Notation;
        var job = new PrintJob([.. plan.SheetsToPrint(notation)], plan.Measured.Paper)
        {
            Title = plan.Measured.Project,
            Cover = plan.HasCover ? plan.Cover(notation) : null,
            FullSize = FullSizePages.All,
        };
        var path = Path.Combine(Path.GetTempPath(), "bendsheet-fuzz", "printed.pdf");
        File.WriteAllBytes(path, PrintedSheets.Of(job, new PdfPress()).Pdf.ToArray());
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
