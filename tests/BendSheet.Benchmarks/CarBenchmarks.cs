using System.Diagnostics;
using System.Globalization;
using System.Text;
using BenchmarkDotNet.Attributes;
using BendSheet.Core.Bench;
using BendSheet.Core.Car;
using BendSheet.Core.Clearance;
using BendSheet.Files.Reading;

namespace BendSheet.Benchmarks;

/// <summary>500 lines whose places are known, held against each other and against 1,000 zones: less than a second of processor time.
/// </summary>
public class CarBenchmarks
{
    private const int Lines = 500;
    private const int Zones = 1000;

    private List<SolvedLine> _lines = [];
    private KeepClear _room = KeepClear.None;

    /// <summary>How they lie: anywhere in a car, or all of them side by side as on a rail.</summary>
    [Params("car", "rail")]
    public string Lie { get; set; } = "car";

    [GlobalSetup]
    public void Prepare()
    {
        var file = TemplateReader.Read("car.yaml", new MemoryStream(Encoding.UTF8.GetBytes(FileOf(Lie))));
        _lines = [.. file.Lines.Select(CarPlan.Line)];
        _room = file.Room;
        if (file.Findings.Length > 0 || _lines.Count != Lines || _room.Zones.Length != Zones)
        {
            throw new InvalidOperationException("The benchmark's own file is wrong.");
        }
    }

    [Benchmark]
    public Clearances Clear() => Clearances.Of(_lines, _room);

    /// <summary>Processor time of one look at each car, the best of five, in words.</summary>
    public static string Run()
    {
        var text = new StringBuilder();
        foreach (var lie in new[] { "car", "rail" })
        {
            var car = new CarBenchmarks { Lie = lie };
            car.Prepare();
            var (best, found) = (TimeSpan.MaxValue, Clearances.None);
            using var own = Process.GetCurrentProcess();
            for (var i = 0; i < 5; i++)
            {
                own.Refresh();
                var before = own.TotalProcessorTime;
                found = car.Clear();
                own.Refresh();
                var took = own.TotalProcessorTime - before;
                best = took < best ? took : best;
            }

            text.AppendLine(
                CultureInfo.InvariantCulture,
                $"{lie}: {found.Looked} lines, {Zones} zones, {found.Approaches.Length} too near, whole {found.IsWhole}: "
                    + $"{best.TotalMilliseconds:0} ms of processor time");
        }

        return text.ToString();
    }

    /// <summary>Three bends a line. On the rail they lie 15 mm beside each other, in layers of 50.</summary>
    private static string FileOf(string lie)
    {
        var random = new Random(7);
        var onRail = string.Equals(lie, "rail", StringComparison.Ordinal);
        var text = new StringBuilder("units: mm\ntube: {od: 3/16 in}\nbender: {radius: 9/16 in}\nkeep-clear:\n");
        for (var i = 0; i < Zones; i++)
        {
            var (x, y, z) = (random.Next(4000), random.Next(1500), random.Next(800));
            var (kind, round) = i % 2 == 0 ? ("box", string.Empty) : ("cylinder", ", radius: 25");
            text.Append(
                CultureInfo.InvariantCulture,
                $"  z{i}: {{{kind}: {{from: {{forward: {x}, left: {y}, up: {z}}}, to: {{forward: {x + 150}, left: {y + 60}, "
                    + $"up: {z + 40}}}{round}}}}}\n");
        }

        text.Append("lines:\n");
        for (var i = 0; i < Lines; i++)
        {
            var (x, y, z) = onRail ? (0, 15 * (i % 50), 15 * (i / 50)) : (random.Next(3500), random.Next(1500), random.Next(800));
            var first = onRail ? 3000 : 100 + (i % 97);
            text.Append(
                CultureInfo.InvariantCulture,
                $"  l{i}: {{start: {{heading: forward, towards: left, at: {{forward: {x}, left: {y}, up: {z}}}}}, "
                    + $"rows: [{{straight: {first}, bend: 45}}, "
                    + $"{{straight: 60, rotate: {i % 180} cw, bend: 30}}, {{straight: 200, rotate: 45 ccw, bend: 90}}, "
                    + $"{{straight: 80}}]}}\n");
        }

        return text.ToString();
    }
}
