using System.ComponentModel;
using System.Diagnostics;

namespace BendSheet.Cli.Output;

/// <summary>The program that the system has for a file.</summary>
internal static class Viewer
{
    /// <summary>
    /// A viewer outlives the command: it writes nothing into its output, is not what Ctrl-C ends, and holds no pipe open. The shell sees to
    /// that, because the runtime cannot.
    /// </summary>
    private const string OnItsOwn = "trap '' INT; exec \"$0\" \"$1\" </dev/null >/dev/null 2>&1";

    /// <summary>A program that only hands the file on ends at once; one that runs longer is showing it.</summary>
    private static readonly TimeSpan Longest = TimeSpan.FromSeconds(5);

    /// <summary>Lets the system show a file.</summary>
    /// <returns>False where it has nothing to show it with, or says that it could not.</returns>
    public static bool Shows(string path)
    {
        var full = Path.GetFullPath(path);
        try
        {
            using var started = Process.Start(
                OperatingSystem.IsWindows() ? new ProcessStartInfo(full) { UseShellExecute = true }
                : new ProcessStartInfo("/bin/sh", ["-c", OnItsOwn, OperatingSystem.IsMacOS() ? "open" : "xdg-open", full]));

            // On Windows nothing is started where a program that runs already shows it.
            return started is null || !started.WaitForExit(Longest) || started.ExitCode == 0;
        }
        catch (Exception failure) when (failure is Win32Exception or InvalidOperationException or IOException)
        {
            return false;
        }
    }
}
