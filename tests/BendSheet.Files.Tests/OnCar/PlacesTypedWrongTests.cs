using BendSheet.Core.Findings;
using static BendSheet.Files.Tests.Reading.TypedTemplates;

namespace BendSheet.Files.Tests.OnCar;

/// <summary>A slip in a place, a way, a zone or a span gets one finding where it was typed.</summary>
public class PlacesTypedWrongTests
{
    [Theory]
    // Ports
    [InlineData("{at: {}}", "missing-word", "`at` has no place in it")]
    [InlineData("{at: {within: 3}}", "missing-word", "`at` has no place in it")]
    [InlineData("{at: 1200}", "wrong-kind", "`at`")]
    [InlineData("{at: [1, 2, 3]}", "wrong-kind", "`at`")]
    [InlineData("{at: {foward: 1200}}", "unknown-word", "did you mean `forward`?")]
    [InlineData("{at: {forward: 1200, back: 100}}", "said-twice", "give the difference, one way")]
    [InlineData("{at: {forward: NaN}}", "unreadable-length", "NaN")]
    [InlineData("{at: {forward: .inf}}", "unreadable-length", ".inf")]
    [InlineData("{at: {forward: 1e5}}", "unreadable-length", "1e5")]
    [InlineData("{at: {forward: 101 m}}", "out-of-range", "must be at most 100 m, either way")]
    [InlineData("{at: {up: -100.1 m}}", "out-of-range", "must be at most 100 m, either way")]
    [InlineData("{at: {up: 5, within: -1}}", "out-of-range", "must be 0 or more")]
    [InlineData("{faces: sideways}", "not-a-choice", "`forward`")]
    [InlineData("{faces: [0, 0, 0]}", "out-of-range", "is no way")]
    [InlineData("{faces: [1, 0]}", "wrong-kind", "three figures")]
    [InlineData("{faces: [1, 0, [2]]}", "wrong-kind", "three figures")]
    [InlineData("{faces: [1, 0, NaN]}", "out-of-range", "must be from -1000 to 1000")]
    [InlineData("{faces: [1, 0, 1001]}", "out-of-range", "must be from -1000 to 1000")]
    public void Of_a_port(string port, string rule, string cure) =>
        Says(Top + $"parts: {{tee: {{kind: other, ports: {{a: {port}}}}}}}\n" + Line, 4, rule, cure);

    [Theory]
    [InlineData("[]", "wrong-kind", "has a name for each part of the car")]
    [InlineData("{pipe: {clearance: 20}}", "missing-word", "has no shape")]
    [InlineData("{pipe: {box: {from: {up: 0}}}}", "missing-word", "add `to`")]
    [InlineData("{pipe: {box: {form: {up: 0}, to: {up: 1}}}}", "unknown-word", "did you mean `from`?")]
    [InlineData("{pipe: {box: {from: {}, to: {up: 1}}}}", "missing-word", "this place is empty")]
    [InlineData("{pipe: {cylinder: {from: {up: 0}, to: {up: 50}}}}", "missing-word", "needs its `radius`")]
    [InlineData("{pipe: {cylinder: {from: {up: 5}, to: {up: 5}, radius: 20}}}", "out-of-range", "from a point to itself has no length")]
    [InlineData("{pipe: {cylinder: {from: {up: 0}, to: {up: 50}, radius: 0}}}", "out-of-range", "`radius: 0` cannot be")]
    [InlineData("{pipe: {cylinder: {from: {up: 0}, to: {up: inf}, radius: 9}}}", "unreadable-length", "inf")]
    [InlineData("{pipe: {box: {from: {up: 0}, to: {up: 1}}, clearance: -5}}", "out-of-range", "must be 0 or more")]
    [InlineData(
        "{pipe: {box: {from: {up: 0}, to: {up: 1}}, cylinder: {from: {up: 0}, to: {up: 1}, radius: 1}}}", "said-twice", "make two zones")]
    public void Of_a_zone(string zones, string rule, string cure) => Says(Top + $"keep-clear: {zones}\n" + Line, 4, rule, cure);

    [Theory]
    [InlineData("{}", "missing-word", "`spans` has no length in it")]
    [InlineData("330", "wrong-kind", "`spans`")]
    [InlineData("{lok: 330}", "unknown-word", "did you mean `lock`?")]
    [InlineData("{lock: 0}", "out-of-range", "`lock: 0` cannot be")]
    [InlineData("{lock: long}", "unreadable-length", "long")]
    public void Of_the_spans_of_a_hose(string spans, string rule, string cure) =>
        Says(Top + $"hoses: {{left: {{from: here, to: there, spans: {spans}}}}}\n" + Line, 4, rule, cure);

    [Theory]
    [InlineData("{heading: up, towards: left, at: 5}", "wrong-kind", "")]
    [InlineData("{heading: up, towards: left, at: {within: 5}}", "unknown-word", "`within`")]
    [InlineData("{heading: up, towards: left, at: {forward: NaN}}", "unreadable-length", "NaN")]
    [InlineData("{heading: up, towards: left, at: {}}", "missing-word", "this place is empty")]
    public void Of_the_start_of_a_line(string start, string rule, string cure) => Says(
        Top + $"lines:\n  fl: {{start: {start}, rows: [{{straight: 120, bend: 45}}, {{straight: 80}}]}}\n", 5, rule, cure);

    [Fact]
    public void The_air_between_lines_is_no_less_than_nothing() =>
        Says(Top + "clearance: -1\n" + Line, 4, "out-of-range", "must be 0 or more");

    private static void Says(string typed, int row, string rule, string cure)
    {
        var finding = Assert.Single(Read(typed).Findings);
        Assert.Equal((rule, row, Severity.Error), (finding.Rule.Name, finding.Position.Line, finding.Severity));
        Assert.Contains(cure, finding.Message, StringComparison.Ordinal);
    }
}
