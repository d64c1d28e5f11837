using BenchmarkDotNet.Running;
using BendSheet.Benchmarks.Simulated;

switch (args)
{
    case ["slips"]:
        Console.Write(SlipExperiment.Run());
        break;
    case ["car"]:
        Console.Write(BendSheet.Benchmarks.CarBenchmarks.Run());
        break;
    case ["piece"]:
        Console.Write(PieceExperiment.Run());
        break;
    case ["evening"]:
        Console.Write(Evening.Run());
        break;
    case ["fuzz", .. var how]:
        return BendSheet.Benchmarks.Fuzzing.FuzzRun.Run(how) == 0 ? 0 : 1;
    default:
        BenchmarkSwitcher.FromAssembly(typeof(BendSheet.Benchmarks.SheetBenchmarks).Assembly).Run(args);
        break;
}

return 0;
