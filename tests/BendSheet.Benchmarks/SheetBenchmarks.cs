using System.Collections.Immutable;
using System.Globalization;
using System.Text;
using BenchmarkDotNet.Attributes;
using BendSheet.Core.Bench;
using BendSheet.Core.Car;
using BendSheet.Core.Sheet;
using BendSheet.Files.Reading;
using BendSheet.Pdf;
using BendSheet.Sheets;

namespace BendSheet.Benchmarks;

/// <summary>Each stage of the way from a typed file to its sheets, for one line and for a thousand.</summary>
[MemoryDiagnoser]
public class SheetBenchmarks
{
    private byte[] _file = [];
    private TemplateFile _read = null!;
    private ImmutableArray<SolvedLine> _solved;
    private ImmutableArray<SheetContent> _content;

    [Params(1, 1000)]
    public int Lines { get; set; }

    [GlobalSetup]
    public void Prepare()
    {
        _file = Encoding.UTF8.GetBytes(FileOf(Lines));
        _read = Read();
        _solved = Solve();
        _content = Word();
    }

    [Benchmark]
    public TemplateFile Read() => TemplateReader.Read("lines.yaml", new MemoryStream(_file));

    [Benchmark]
    public ImmutableArray<SolvedLine> Solve() => [.. _read.Lines.Select(CarPlan.Line)];

    [Benchmark]
    public ImmutableArray<SheetContent> Word() => [.. _solved.Select(line => SheetWriter.Of(line, _read.Project, _read.Notation))];

    [Benchmark]
    public PrintedSheets Print() => PrintedSheets.Of(new(_content, Paper.A4), new PdfPress());

    /// <summary>Three bends a line, every line a little different.</summary>
    private static string FileOf(int lines)
    {
        var text = new StringBuilder("units: mm\ntube: {od: 3/16 in}\nbender: {radius: 9/16 in}\nlines:\n");
        for (var i = 0; i < lines; i++)
        {
            text.Append(
                CultureInfo.InvariantCulture,
                $"  line-{i}:\n    - {{straight: {100 + (i % 97)}, bend: 45}}\n    - {{straight: 60, rotate: {i % 180} cw, bend: 30}}\n  "
                    + $"  - {{straight: 200, rotate: 45 ccw, bend: 90}}\n    - {{straight: 80}}\n");
        }

        return text.ToString();
    }
}
