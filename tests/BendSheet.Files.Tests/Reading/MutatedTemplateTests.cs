using System.Collections.Immutable;
using System.Text;
using BendSheet.Core.Bench;
using BendSheet.Core.Car;
using BendSheet.Core.Findings;
using BendSheet.Core.Plumbing;
using BendSheet.Core.Plumbing.Rules;
using BendSheet.Core.Sheet;
using BendSheet.Core.Stock;
using BendSheet.Files.Reading;
using BendSheet.Files.Yaml;
using static BendSheet.Files.Tests.Reading.TypedTemplates;

namespace BendSheet.Files.Tests.Reading;

/// <summary>Whole files with slips of the finger at random, taken from the text to the content of their sheets.</summary>
public class MutatedTemplateTests
{
    private const int Seed = 9316;

    private const int Files = 6_000;

    private static readonly string[] Good =
    [
        Top + "lines:\n  fl:\n    - {straight: 120, bend: 45}\n    - {straight: 60, rotate: 90 cw, bend: 30, note: up}\n    - "
            + "{straight: 80}\n",
        """
        project: Finch
        units: in
        tubes: {main: {od: 3/16 in, wall: 0.028, material: steel, smallest-radius: 9.5 mm}, fuel: {od: 5/16}}
        benders:
          hand: {radius: 9/16 in, mark: middle, offset: -0.1, grip: 1/2, follow: 3/8, largest-bend: 180, arc-factor: 1.02, room: 36, clear-below: 6, body: 1 1/2}
          small: {radius: 10 mm, tests: [{pull: 93, got: 90, tube: main}, {pull: 47.5, included: 135}, {got: 90, length: 8, legs: [4 3/16, 4 3/16], measured: outside, tube: fuel}]}
        fittings: {an3: {flare: single 37, takes: 0.5 mm, slide-on: [{nut: 17 mm}, {sleeve: 9 mm}], straight: 35 mm}}
        wire: {diameter: 2.4 mm, radius: 4 mm}
        tolerance: {straight: 1 mm, bend: 1.5, rotate: 3}
        lines:
          rear:
            tube: main
            bender: hand
            from: {at: outlet, fitting: an3}
            to: {at: tee, fitting: an3, trim: 1}
            measured: straight
            rows:
              - {straight: 12 5/16, bend: 45}
              - {straight: 2' 3-1/2"}
              - {straight: 9, rotate: 15 ccw, included: 150, bender: small, note: tight}
              - {straight: 4, bend: 180}
              - {straight: 3}
            made: false

        """,
        """
        units: mm
        tube: {od: 3/16 in}
        bender: {radius: 15}
        fittings: {an3: {flare: single 37, thread: 3/8-24}}
        pedal-switch: true
        parts:
          master: {kind: master-cylinder, ports: {front: {is: 1/8-27 taper, circuit: front}, rear: {is: an-3, circuit: rear}}}
          elbow: {kind: adapter, ports: {in: 1/8 npt, out: an-3}, screws-into: {in: master.front}, have: 1}
          cap: {kind: plug, ports: M10x1 bubble, screws-into: rear-cross.left}
          rear-cross: {kind: cross, ports: [in, left, right, out]}
          left: {kind: caliper, ports: {inlet: M10x1 banjo, bleeder: }}
        hoses: {hose: {from: {at: rear-cross.right, is: inverted 3/16}, to: left.inlet, length: 350, have: 2}}
        lines:
          fl: {from: {at: elbow.out, fitting: an3}, to: front, rows: [{straight: 120, bend: 45}, {straight: 90}]}
          rear: {from: {at: master.rear, fitting: an3}, to: rear-cross.in, rows: [{straight: 320}]}

        """,
        """
        units: mm
        tubes: {main: {od: 3/16 in, material: steel}, fuel: {od: 8}}
        bender: {radius: 14}
        fittings: {an3: {flare: single 37, slide-on: [{nut: 17 mm}]}}
        stock: [{name: roll 1, tube: main, length: 25 ft, left: 3000, price: 50}, {kind: stick, tube: fuel, length: 2 m, count: 2}]
        cutting-loss: 1
        spare: 10 %
        practice: {flares: 6, length: 60, tube: main}
        have: {nut: 4, clip: 1}
        lines:
          front: {tube: main, rough: 2.4 m, from: {at: tee, fitting: an3}}
          right: {mirror: front, made: true}
          feed: {tube: fuel, clips: {every: 300}, rows: [{straight: 400, bend: 45}, {straight: 500}]}

        """,
    ];

    /// <summary>What stands for a figure, a word or a piece of structure in another place.</summary>
    private static readonly string[] Pieces =
    [
        "0",
        "-1",
        "1e308",
        ".nan",
        "1/0",
        "0.0000001",
        "99999",
        "100 m",
        "180",
        "179.9999999",
        "359.99",
        "360",
        "90 ccw",
        "-45",
        "1,5",
        "\"\"", "~",
        "straight",
        "bend",
        "included",
        "rotate",
        "rows",
        "lines",
        "tube",
        "tubes",
        "bender",
        "benders",
        "units: mm",
        "measured: along",
        "measured: outside",
        "outside",
        "corner",
        "mirror: fl",
        "use: x",
        "tee.left",
        "master.front",
        "front-tee",
        "rear-cross.out",
        "an-3",
        "1/8 npt",
        "plug",
        "screws-into: master.rear",
        "circuit: rear",
        "main",
        "hand",
        "an3",
        "none",
        "[]",
        "{}",
        "[1]",
        "{a: 1}",
        "\n",
        "\n  ",
        "\n    ",
        ": ", ", ", "- ", "{", "}",
        "\"\\e[31m\"", "\"\\ud800\"", "°", "é", "🚗", new string('9', 400), new string('n', 120), "\u202e", "\t", "\0",
    ];

    [Fact]
    public void Whatever_is_typed_becomes_findings_and_sheets_and_never_an_exception()
    {
        var random = new Random(Seed);
        var (lines, sheets) = (0, 0);
        for (var files = 0; files < Files; files++)
        {
            var typed = Good[random.Next(Good.Length)];
            for (var times = random.Next(1, 5); times > 0; times--)
            {
                typed = Mutate(typed, random);
            }

            try
            {
                var file = Read(typed);
                lines += file.Lines.Length;
                CheckFindings(file.Findings, file.Source);
                CheckNothingIsLostInSilence(typed, file);
                CheckPlumbing(file);
                ImmutableArray<SolvedLine> all = [.. file.Lines.Select(CarPlan.Line)];
                CheckStock(file, all);
                foreach (var solved in all)
                {
                    CheckFindings(solved.Findings, file.Source);
                    if (solved.Plan is null)
                    {
                        Assert.Contains(solved.Findings, finding => finding.Severity == Severity.Error);
                        continue;
                    }

                    CheckSheet(SheetWriter.Of(solved, file.Project, file.Notation));
                    sheets++;
                }
            }
            catch (Exception e)
            {
                throw new InvalidOperationException(
                    $"seed {Seed}, typed: {Convert.ToBase64String(Encoding.UTF8.GetBytes(typed))} = {typed}", e);
            }
        }

        Assert.True(lines > 1_000 && sheets > 500, $"only {lines} lines and {sheets} sheets came of {Files} files");
    }

    private static void CheckFindings(IEnumerable<Finding> findings, SourceLines source)
    {
        foreach (var finding in findings)
        {
            Assert.InRange(finding.Position.Line, 1, source.Count);
            Assert.InRange(finding.Position.Column, 1, source[finding.Position.Line].Length + 1);
            Assert.DoesNotContain(finding.Message, char.IsControl);
            Assert.DoesNotContain("NaN", finding.Message, StringComparison.Ordinal);
            Assert.InRange(finding.Message.Length, 10, 600);
        }

        Assert.Equal(findings.Count(), findings.Distinct().Count());
    }

    private static void CheckPlumbing(TemplateFile file)
    {
        var network = PipeNetwork.Of(file.Parts, file.Lines, file.RoughLines);
        var found = PlumbingRules.Check(network);
        CheckFindings([.. found.OfLines.SelectMany(line => line).Distinct(), .. found.OfCar], file.Source);
        Assert.All(PlumbingNeeds.Of(network, file.Notation), need => Assert.InRange(need.Count, 1, 1000));
    }

    private static void CheckNothingIsLostInSilence(string typed, TemplateFile file)
    {
        if (file.Findings.Any(finding => finding.Severity == Severity.Error))
        {
            return;
        }

        var root = Assert.IsType<YamlMap>(YamlDocument.Read("car.yaml", Encoding.UTF8.GetBytes(typed)).Root);
        var lines = Assert.IsType<YamlMap>(
            root.Entries.Single(entry => string.Equals(entry.Key.Text, "lines", StringComparison.Ordinal)).Value);
        Assert.Equal(lines.Entries.Count, file.Lines.Length + file.RoughLines.Length);
    }

    private static void CheckStock(TemplateFile file, ImmutableArray<SolvedLine> lines)
    {
        var stock = StockPlan.Of(lines, file.RoughLines, file.Stores);
        var shopping = ShoppingList.Of(lines, file.RoughLines, stock, file.Stores.Have, [], file.Notation);
        CheckFindings(stock.Findings.Concat(shopping.Findings), file.Source);
        Assert.Equal(
            lines.Length
                + file.RoughLines.Length,
                CoverWriter.OfFile(file.Project, lines, file.RoughLines, stock, shopping, file.Notation).Lines.Length);
    }

    private static void CheckSheet(SheetContent sheet)
    {
        foreach (var row in sheet.Rows)
        {
            Assert.Matches("^-?[0-9]", row.Mark);
        }

        Assert.DoesNotContain("NaN", string.Join(' ', sheet.ReadFirst.Concat(sheet.Order)), StringComparison.Ordinal);
    }

    private static string Mutate(string typed, Random random)
    {
        var piece = Pieces[random.Next(Pieces.Length)];
        var (start, length) = Token(typed, random);
        return random.Next(8) switch
        {
            0 => typed.Insert(start, piece),
            1 => typed.Remove(start, length),
            2 or 3 or 4 => typed.Remove(start, length).Insert(start, piece),
            5 => typed.Remove(start + random.Next(length), 1),
            6 => SwapLines(typed, random),
            _ => SwapTokens(typed, random),
        };
    }

    /// <summary>A run of letters, figures and signs that is one word or figure, or else a single character.</summary>
    private static (int Start, int Length) Token(string typed, Random random)
    {
        if (typed.Length == 0)
        {
            typed = " ";
        }

        static bool IsPart(char c) => char.IsLetterOrDigit(c) || c is '-' or '.' or '/' or '\'' or '"';
        var at = random.Next(typed.Length);
        var (start, end) = (at, at + 1);
        while (IsPart(typed[at]) && start > 0 && IsPart(typed[start - 1]))
        {
            start--;
        }

        while (IsPart(typed[at]) && end < typed.Length && IsPart(typed[end]))
        {
            end++;
        }

        return (start, end - start);
    }

    private static string SwapLines(string typed, Random random)
    {
        var lines = typed.Split('\n');
        var (a, b) = (random.Next(lines.Length), random.Next(lines.Length));
        (lines[a], lines[b]) = (lines[b], lines[a]);
        return string.Join('\n', lines);
    }

    private static string SwapTokens(string typed, Random random)
    {
        var (from, length) = Token(typed, random);
        var token = typed.Substring(from, length);
        var (to, replaced) = Token(typed, random);
        return typed.Remove(to, replaced).Insert(to, token);
    }
}
