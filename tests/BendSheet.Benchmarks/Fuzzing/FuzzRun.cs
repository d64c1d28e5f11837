using System.Diagnostics;
using System.Globalization;
using System.Text;

namespace BendSheet.Benchmarks.Fuzzing;

/// <summary>
/// Takes many typed files all the way, several at a time. Whatever was typed, there is no exception, every finding lies inside the file,
/// what is written can be read, and it takes neither long nor much.
/// </summary>
internal sealed class FuzzRun(int seed, int first, int count)
{
    /// <summary>Of one command, in processor time, so that other programs on the machine do not count.</summary>
    private static readonly TimeSpan Longest = TimeSpan.FromSeconds(1);

    /// <summary>How often a file that took long is taken again, alone: a machine that stands still for a while counts as well.</summary>
    private const int TimesAlone = 3;

    /// <summary>Each time that a file is taken, all that is allocated; what is collected meanwhile counts as well.</summary>
    private const long MostBytes = 700L * 1024 * 1024;
    private const int MostFailures = 100;

    /// <summary>As much as the program's own thread has.</summary>
    private const int Stack = 8 * 1024 * 1024;

    private readonly string _folder = Directory.CreateDirectory(Path.Combine(Path.GetTempPath(), "bendsheet-fuzz")).FullName;
    private readonly FuzzedFiles _files = new(
        seed, [.. Directory.GetFiles("samples", "*.yaml").Order(StringComparer.Ordinal).Select(File.ReadAllText)]);

    private readonly Lock _gate = new();

    /// <summary>Files that took long while others were taken beside them, to be taken again alone.</summary>
    private readonly List<int> _slow = [];

    private int _next = first - 1;
    private int _failures;

    /// <summary>Runs <c>fuzz [COUNT] [SEED] [FIRST]</c>; the number of files that something is wrong with, at most 100.</summary>
    /// <param name="args">Behind <c>fuzz</c>.</param>
    public static int Run(string[] args)
    {
        int Number(int at, int otherwise) => args.Length > at ? int.Parse(args[at], CultureInfo.InvariantCulture) : otherwise;
        return new FuzzRun(Number(1, 20261126), Number(2, 0), Number(0, 30_000)).Run();
    }

    private int Run()
    {
        var watch = Stopwatch.StartNew();
        var checks = Enumerable.Range(0, Environment.ProcessorCount).Select(_ => new FileCheck(_folder)).ToList();
        var workers = checks.Select((check, i) => new Thread(() => TakeFiles(check, i), Stack)).ToList();
        workers.ForEach(worker => worker.Start());
        workers.ForEach(worker => worker.Join());
        foreach (var number in _slow)
        {
            var took = Enumerable.Range(0, TimesAlone).Min(_ => Alone(number));
            if (took > Longest)
            {
                Report(number, FormattableString.Invariant($"took {took.TotalSeconds:0.0} s of processor time"));
            }
        }

        var done = Math.Min(_next, first + count) - first;
        Console.WriteLine(string.Create(
            CultureInfo.InvariantCulture,
            $"{done} files from {first} on, seed {seed}: {_failures} wrong; {checks.Sum(check => check.Sound)} without a mistake, "
                + $"{checks.Sum(check => (long)check.Lines)} lines solved, {checks.Sum(check => check.Printable)} with sheets; "
                + $"{done / watch.Elapsed.TotalSeconds:0} files a second"));
        return _failures;
    }

    private void TakeFiles(FileCheck check, int worker)
    {
        // A stack that overflows ends the process at once: which file it was is on the disk then.
        var name = Path.Combine(_folder, FormattableString.Invariant($"current-{worker}"));
        using var current = File.OpenHandle(name, FileMode.Create, FileAccess.Write);
        while (Interlocked.Increment(ref _next) is var number && number < first + count && _failures < MostFailures)
        {
            RandomAccess.Write(current, Encoding.ASCII.GetBytes(number.ToString("D10", CultureInfo.InvariantCulture)), 0);
            if (WhatIsWrong(check, number) is { } wrong)
            {
                Report(number, wrong);
            }
        }
    }

    private string? WhatIsWrong(FileCheck check, int number)
    {
        var (time, bytes) = (Environment.CpuUsage.TotalTime, GC.GetAllocatedBytesForCurrentThread());
        try
        {
            var wrong = check.WhatIsWrong(_files[number], number);
            if (Environment.CpuUsage.TotalTime - time > Longest)
            {
                lock (_gate)
                {
                    _slow.Add(number);
                }
            }

            var taken = GC.GetAllocatedBytesForCurrentThread() - bytes;
            return wrong ?? (taken > MostBytes * FileCheck.Times(number) ? $"took {taken / 1024 / 1024} MB" : null);
        }
        catch (Exception defect)
        {
            return defect.ToString();
        }
    }

    private TimeSpan Alone(int number)
    {
        var check = new FileCheck(_folder);
        check.WhatIsWrong(_files[number], number);
        return check.Longest;
    }

    private void Report(int number, string wrong)
    {
        lock (_gate)
        {
            _failures++;
            var path = Path.Combine(_folder, FormattableString.Invariant($"{seed}-{number}.yaml"));
            File.WriteAllText(path, _files[number]);
            Console.WriteLine($"{path}: {wrong}");
        }
    }
}
