namespace BendSheet.Files.Tests.OnCar;

/// <summary>A file in which hardly anything agrees is read in bounded work, and says no more than was tried.</summary>
public class ManySlipsTests
{
    [Fact]
    public void What_was_not_tried_is_not_denied()
    {
        const string NoSlip = "no single slip explains it";
        var lines = Enumerable.Range(0, 200).Select(line => FormattableString.Invariant(
            $"  l{line}: {{rows: [{{straight: 120, bend: 90}}, {{straight: {150 + line}, rotate: 60 cw, bend: 45}}, ")
                + FormattableString.Invariant($"{{straight: 210, rotate: 120 cw, bend: 60}}, {{straight: 180, rotate: 30 cw, bend: 90}}, ")
                + FormattableString.Invariant($"{{straight: 100}}], ")
                + FormattableString.Invariant($"taped: {{A-B: {100 + line}, B ahead: 444, 1-B: 90, B aside: 10, A-2: 9}}}}"));
        var plan = TypedCars.Plan("units: mm\ntube: {od: 3/16 in}\nbender: {radius: 12}\nlines:\n" + string.Join('\n', lines) + "\n");
        var said = plan.Findings.Where(finding => finding.Rule.Name is "measured-apart").Select(finding => finding.Message).ToList();
        Assert.Equal(200, said.Count);
        Assert.Contains(NoSlip, said[0], StringComparison.Ordinal);
        Assert.StartsWith("the measurements of this line contradict each other: measure again, ", said[^1], StringComparison.Ordinal);
        Assert.InRange(said.Count(message => message.Contains(NoSlip, StringComparison.Ordinal)), 5, 100);
    }
}
