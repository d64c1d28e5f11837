using BendSheet.Core.Findings;
using BendSheet.Core.Plumbing;
using BendSheet.Core.Plumbing.Rules;
using BendSheet.Files.Tests.Reading;

namespace BendSheet.Files.Tests.Plumbing;

/// <summary>
/// A small car whose plumbing is sound, and the same with a slip in it. A caret in what is typed marks where the finding has to stand.
/// </summary>
internal static class SmallCar
{
    public const string Sound = """
        units: mm
        tube: {od: 3/16 in, wall: 0.028 in, material: copper-nickel}
        bender: {radius: 15}
        fittings:
          an3: {flare: single 37, thread: 3/8-24}
          inverted: {flare: double 45, thread: 3/8-24}
        parts:
          master:
            kind: master-cylinder
            ports: {front: {is: 1/8-27 taper, circuit: front}, rear: {is: 3/8-24 inverted 45, circuit: rear}}
          elbow: {kind: adapter, ports: {in: 1/8 npt, out: an-3}, screws-into: {in: master.front}}
          front-tee: {kind: tee, ports: an-3, have: 1}
          left-bracket: {kind: bulkhead, ports: an-3}
          right-bracket: {kind: bulkhead, ports: an-3}
          left-front: {kind: caliper, ports: {inlet: M10x1 banjo, bleeder: }}
          right-front: {kind: caliper, ports: {inlet: M10x1 banjo, bleeder: }}
          rear-cross: {kind: cross, ports: inverted 3/16}
          stop-light: {kind: switch, ports: inverted 3/16, screws-into: rear-cross.out}
          left-rear: {kind: wheel-cylinder, mounted: chassis, ports: inverted 3/16}
          right-rear: {kind: wheel-cylinder, mounted: chassis, ports: inverted 3/16}
        hoses:
          left-hose: {from: {at: left-bracket.out, is: an-3}, to: {at: left-front.inlet, is: M10x1 banjo}, length: 350}
          right-hose: {from: {at: right-bracket.out, is: an-3}, to: {at: right-front.inlet, is: M10x1 banjo}, length: 350}
        lines:
          front: {from: {at: elbow.out, fitting: an3}, to: {at: front-tee.in, fitting: an3}, rows: [{straight: 320}]}
          front-left: {from: {at: front-tee.left, fitting: an3}, to: {at: left-bracket.in, fitting: an3}, rows: [{straight: 300}]}
          front-right: {from: {at: front-tee.right, fitting: an3}, to: {at: right-bracket.in, fitting: an3}, rows: [{straight: 700}]}
          rear: {from: {at: master.rear, fitting: inverted}, to: {at: rear-cross.in, fitting: inverted}, rows: [{straight: 1700}]}
          rear-left: {from: {at: rear-cross.left, fitting: inverted}, to: {at: left-rear.inlet, fitting: inverted}, rows: [{straight: 500}]}
          rear-right: {from: {at: rear-cross.right, fitting: inverted}, to: {at: right-rear.inlet, fitting: inverted}, rows: [{straight: 500}]}

        """;

    /// <summary>The sound car with some of it typed otherwise, each place once.</summary>
    public static string With(params (string Instead, string Typed)[] slips)
    {
        var text = Sound;
        foreach (var (instead, typed) in slips)
        {
            Assert.Equal(2, text.Split(instead).Length);
            text = text.Replace(instead, typed, StringComparison.Ordinal);
        }

        return text;
    }

    /// <summary>All findings: those of the file, and where it is sound those of the plumbing, in the order of the file.</summary>
    public static List<Finding> Findings(string typed)
    {
        var file = TypedTemplates.Read(typed.Replace("^", string.Empty, StringComparison.Ordinal));
        var found = PlumbingRules.Check(PipeNetwork.Of(file.Parts, file.Lines, file.RoughLines));
        var isWrong = file.Findings.Any(finding => finding.Severity == Severity.Error);
        return
        [
            .. file.Findings.Concat(isWrong ? [] : found.OfLines.SelectMany(line => line).Distinct().Concat(found.OfCar))
                .OrderBy(finding => finding.Position.Line).ThenBy(finding => finding.Position.Column),
        ];
    }

    /// <summary>The rules of findings, in the order of the file.</summary>
    public static string Rules(IEnumerable<Finding> findings) => string.Join(", ", findings.Select(finding => finding.Rule.Name));

    /// <summary>There is nothing but this to be said, and it is said at the caret.</summary>
    public static void HasOne(string typed, Severity severity, Rule rule, string message)
    {
        var finding = Assert.Single(Findings(typed));
        Assert.Equal(message, finding.Message);
        Assert.Same(rule, finding.Rule);
        Assert.Equal(severity, finding.Severity);
        Assert.Equal(Caret(typed), finding.Position);
    }

    /// <summary>Where the caret stands.</summary>
    public static SourcePosition Caret(string typed)
    {
        var before = typed[..typed.IndexOf('^', StringComparison.Ordinal)].Split('\n');
        return new("car.yaml", before.Length, before[^1].Length + 1);
    }
}
