using BenchmarkDotNet.Running;

BenchmarkSwitcher.FromAssembly(typeof(BendSheet.Benchmarks.SheetBenchmarks).Assembly).Run(args);
