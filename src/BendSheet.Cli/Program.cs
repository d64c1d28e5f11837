using BendSheet.Cli;
using BendSheet.Cli.Output;

Surroundings surroundings;
try
{
    surroundings = Surroundings.OfProcess();
}
catch (Exception failure) when (failure is IOException or UnauthorizedAccessException)
{
    // Standard output or error is closed.
    Surroundings.SayClosed();
    return ExitCodes.NotWritten;
}

return await CommandLine.RunAsync(args, surroundings);
