using System.Diagnostics;
using System.Text;

namespace BendSheet.Cli.Tests;

/// <summary>The real program while it runs, with all that it has written so far.</summary>
internal sealed class RunningProgram : IDisposable
{
    /// <summary>Generous: a busy machine may take its time, and no test depends on how much.</summary>
    private static readonly TimeSpan Patience = TimeSpan.FromMinutes(3);

    private static readonly TimeSpan BetweenLooks = TimeSpan.FromMilliseconds(20);

    /// <summary>Looks are counted: a machine that is busy elsewhere takes no patience away.</summary>
    private const int MostLooks = 9000;

    private readonly Process _process;
    private readonly StringBuilder[] _pipes = [new(), new()];
    private readonly int[] _read = [0, 0];

    private RunningProgram(ProcessStartInfo start)
    {
        start.UseShellExecute = false;
        start.RedirectStandardInput = start.RedirectStandardOutput = start.RedirectStandardError = true;
        start.StandardOutputEncoding = start.StandardErrorEncoding = Encoding.UTF8;
        _process = new() { StartInfo = start };
        _process.OutputDataReceived += (_, line) => Take(0, line.Data);
        _process.ErrorDataReceived += (_, line) => Take(1, line.Data);
        _process.Start();
        _process.BeginOutputReadLine();
        _process.BeginErrorReadLine();
    }

    /// <summary>The program, its outputs in pipes.</summary>
    public static RunningProgram Start(params string[] args) => new(new("dotnet", [Library, .. args]));

    /// <summary>
    /// The program on a terminal of its own. What is typed there is said beforehand: each answer is typed when the words before it are
    /// on the screen.
    /// </summary>
    /// <param name="typed">Words to wait for, and what to type then.</param>
    /// <param name="args">Of the program.</param>
    public static RunningProgram OnTerminal(IReadOnlyList<(string Wait, string Type)> typed, params string[] args)
    {
        string[] waits = [.. typed.SelectMany(one => new[] { one.Wait, one.Type })];
        var start = new ProcessStartInfo("python3", ["-c", Terminal, .. waits, "--", "dotnet", Library, .. args]);
        start.Environment["TERM"] = "xterm";
        return new(start);
    }

    /// <summary>All that came on the output, then all on the error output: which of two lines on both came first nobody knows.</summary>
    public string Written => Text(0) + Text(1);

    /// <summary>Waits until the words have come on either output, after those that were waited for last on the same one.</summary>
    public async Task Sees(string words)
    {
        for (var looks = 0; !Enumerable.Range(0, _pipes.Length).Any(pipe => Takes(pipe, words)); looks++)
        {
            Assert.True(looks < MostLooks, $"`{words}` did not come, but: {Text(0)[_read[0]..]}{Text(1)[_read[1]..]}");
            await Task.Delay(BetweenLooks);
        }
    }

    private bool Takes(int pipe, string words)
    {
        var at = Text(pipe).IndexOf(words, _read[pipe], StringComparison.Ordinal);
        _read[pipe] = at < 0 ? _read[pipe] : at + words.Length;
        return at >= 0;
    }

    private string Text(int pipe)
    {
        lock (_pipes)
        {
            return _pipes[pipe].ToString();
        }
    }

    /// <summary>Presses Ctrl-C and waits for the end.</summary>
    public async Task<int> Interrupted()
    {
        using var kill = Process.Start("kill", ["-INT", $"{_process.Id}"]);
        return await Ended();
    }

    /// <summary>Waits for the end.</summary>
    public async Task<int> Ended()
    {
        using var patience = new CancellationTokenSource(Patience);
        await _process.WaitForExitAsync(patience.Token);
        return _process.ExitCode;
    }

    public void Dispose()
    {
        if (!_process.HasExited)
        {
            _process.Kill(entireProcessTree: true);
        }

        _process.Dispose();
    }

    private static string Library => Path.Combine(AppContext.BaseDirectory, "bendsheet.dll");

    private void Take(int pipe, string? line)
    {
        lock (_pipes)
        {
            _pipes[pipe].Append(line).Append('\n');
        }
    }

    /// <summary>Runs a program on a pseudo-terminal, and writes what its screen shows.</summary>
    private const string Terminal = """
        import os, pty, sys
        words = sys.argv[1:sys.argv.index('--')]
        program = sys.argv[sys.argv.index('--') + 1:]
        pid, screen = pty.fork()
        if pid == 0:
            os.execvp(program[0], program)
        seen = b''
        while True:
            try:
                more = os.read(screen, 4096)
            except OSError:
                break
            if not more:
                break
            os.write(1, more)
            seen += more
            while words and words[0].encode() in seen:
                seen = seen[seen.index(words[0].encode()) + len(words[0].encode()):]
                os.write(screen, words[1].encode())
                words = words[2:]
        _, status = os.waitpid(pid, 0)
        sys.exit(os.waitstatus_to_exitcode(status) % 256)
        """;
}

/// <summary>A test that needs a terminal of its own, which Python makes.</summary>
public sealed class FactOnTerminalAttribute : FactAttribute
{
    public FactOnTerminalAttribute()
    {
        var folders = (Environment.GetEnvironmentVariable("PATH") ?? string.Empty).Split(Path.PathSeparator);
        if (OperatingSystem.IsWindows() || !folders.Any(folder => File.Exists(Path.Combine(folder, "python3"))))
        {
            Skip = "there is no python3 on this system to make a terminal with";
        }
    }
}
