using System.Text;
using BenchmarkDotNet.Attributes;
using BendSheet.Files.Yaml;

namespace BendSheet.Benchmarks;

/// <summary>Files made to hurt, as large as they may be: each ends in its finding in less than a second.</summary>
public class HostileFileBenchmarks
{
    private byte[] _typed = [];

    [Params("[", "{a: ", "- ", "a,", "\" ", "- &a 1\n", "a: ", "}", "x\n", "\n", "#\n")]
    public string Piece { get; set; } = string.Empty;

    [GlobalSetup]
    public void Prepare() =>
        _typed = Encoding.UTF8.GetBytes(
            string.Concat(Enumerable.Repeat(Piece, YamlDocument.MostBytes / Encoding.UTF8.GetByteCount(Piece))));

    [Benchmark]
    public object Read() => YamlDocument.Read("hostile.yaml", _typed);
}
