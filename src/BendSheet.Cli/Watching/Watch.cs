using System.Collections.Immutable;
using System.Runtime.InteropServices;
using BendSheet.Cli.Output;

namespace BendSheet.Cli.Watching;

/// <summary>
/// Runs a command again at every save, until somebody presses Ctrl-C. It looks at the files four times a second instead of asking the
/// system to report changes: the system watches a folder, not a file, loses it when it is renamed, reports nothing on many network disks,
/// and reports a save before it is over. A look is one question to the disk.
/// </summary>
internal sealed class Watch(Surroundings surroundings)
{
    /// <summary>Cursor to the corner, and the screen empty from there (ECMA-48, CUP and ED). What was scrolled away stays.</summary>
    private const string EmptyScreen = "\u001b[H\u001b[2J";

    private static readonly TimeSpan Pause = TimeSpan.FromMilliseconds(250);

    private bool _again;

    /// <summary>Runs, waits for a save, runs again.</summary>
    /// <param name="name">Of the file, as typed.</param>
    /// <param name="run">Runs the command once; its exit code and all files that it read.</param>
    /// <returns><see cref="ExitCodes.Done"/>: whoever watches is told on the screen what is wrong, and ends it when all is right.</returns>
    public int Run(string name, Func<(int Code, IReadOnlyList<string> Files)> run)
    {
        using var stopped = new ManualResetEventSlim();
        using var interrupted = PosixSignalRegistration.Create(PosixSignal.SIGINT, signal =>
        {
            signal.Cancel = true;
            stopped.Set();
        });
        IReadOnlyList<string> files = [name];
        while (!stopped.IsSet)
        {
            // Before it is read, so that a save while it is read is a change.
            var before = Stamps(files);
            Begin(name);
            (var code, var read) = run();
            End(code);
            before = files.SequenceEqual(read, StringComparer.Ordinal) ? before : Stamps(read);
            files = read;
            var saves = new Saves(before);
            while (!stopped.Wait(Pause) && !saves.Takes(Stamps(files)))
            {
            }
        }

        surroundings.Error.WriteLine();
        surroundings.Say("stopped watching.");
        return ExitCodes.Done;
    }

    private void Begin(string name)
    {
        if (surroundings.Redraws)
        {
            surroundings.Output.Write(EmptyScreen);
        }
        else if (_again)
        {
            surroundings.Output.WriteLine($"--- {Visible.Text(name)} again ---");
        }

        surroundings.Output.Flush();
        _again = true;
    }

    private void End(int code)
    {
        surroundings.Output.Flush();
        var failed = code == ExitCodes.NotWritten ? "it is tried again at the next save; " : string.Empty;
        surroundings.Say($"{failed}watching for the next save, Ctrl-C ends it.");
    }

    private static ImmutableArray<FileStamp> Stamps(IEnumerable<string> files) => [.. files.Select(FileStamp.Of)];
}
