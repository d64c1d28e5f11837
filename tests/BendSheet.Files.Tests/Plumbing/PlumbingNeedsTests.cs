using BendSheet.Core.Plumbing;
using BendSheet.Files.Tests.Reading;

namespace BendSheet.Files.Tests.Plumbing;

public class PlumbingNeedsTests
{
    /// <summary>Counted by hand from the file of the small car.</summary>
    [Fact]
    public void The_small_car_needs_what_is_counted_by_hand() => Assert.Equal(
        """
        1 master-cylinder, 1/8-27 taper, 3/8-24 inverted 45 (0): master
        1 adapter, 1/8-27 taper, 3/8-24 flare 37 (0): elbow
        1 tee, 3 × 3/8-24 flare 37 (1): front-tee
        2 bulkhead, 2 × 3/8-24 flare 37 (0): left-bracket; right-bracket
        2 caliper, M10x1 banjo (0): left-front; right-front
        1 cross, 4 × 3/8-24 inverted 45 (0): rear-cross
        1 switch, 3/8-24 inverted 45 (0): stop-light
        2 wheel-cylinder, 3/8-24 inverted 45 (0): left-rear; right-rear
        2 hose, 350.0 mm, 3/8-24 flare 37 to M10x1 banjo (0): left-hose (left-bracket.out to left-front.inlet); right-hose (right-bracket.out to right-front.inlet)
        4 sealing washer for banjo M10x1 (0): left-front.inlet; right-front.inlet
        1 thread sealant that stands the fluid, for a taper thread 1/8-27 (0): master.front
        """,
        Needs(SmallCar.Sound));

    [Fact]
    public void A_file_of_lines_needs_nothing_more() => Assert.Empty(Needs(TypedTemplates.Top + TypedTemplates.Line));

    [Fact]
    public void A_hose_without_ends_of_its_own_is_called_by_the_ports_it_goes_to() => Assert.Equal(
        "1 bulkhead, 2 × 3/8-24 flare 37 (0): b\n1 hose, 3/8-24 flare 37 (0): h (b.out to the caliper)",
        Needs(TypedTemplates.Top + "parts: {b: {kind: bulkhead, ports: an-3}}\nhoses: {h: {from: b.out, to: the caliper}}\n"
            + TypedTemplates.Line));

    private static string Needs(string typed)
    {
        var file = TypedTemplates.Read(typed);
        return string.Join('\n', PlumbingNeeds.Of(PipeNetwork.Of(file.Parts, file.Lines, file.RoughLines), file.Notation)
            .Select(need => $"{need.Count} {need.Name} ({need.Have}): {string.Join("; ", need.UsedAt)}"));
    }
}
