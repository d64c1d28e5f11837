using BendSheet.Cli;

return await CommandLine.RunAsync(args, Surroundings.OfProcess());
