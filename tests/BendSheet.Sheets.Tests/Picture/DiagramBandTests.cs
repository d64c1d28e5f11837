using BendSheet.Core.Picture;
using BendSheet.Sheets.Picture;

namespace BendSheet.Sheets.Tests.Picture;

public class DiagramBandTests
{
    private const int Seed = 5;

    [Fact]
    public void Every_run_is_drawn_once_between_its_own_ends_and_no_two_lines_cross()
    {
        var random = new Random(Seed);
        for (var network = 0; network < 300; network++)
        {
            var picture = RandomCar.Network(random, 1 + (network % 60));
            var bands = DiagramBand.Of(PlumbingTree.Of(picture), 2 + random.Next(4), 1 + random.Next(20));
            Assert.Equal(
                picture.Runs.Select(run => run.Name).Order(StringComparer.Ordinal),
                bands.SelectMany(band => band.Links).Select(link => link.Branch.Run.Name).Order(StringComparer.Ordinal));
            Assert.All(bands.SelectMany(band => band.Links), link => Assert.Equal(
                new[] { NameOf(link.Branch.Run.A), NameOf(link.Branch.Run.B) }.Order(StringComparer.Ordinal),
                new[] { link.From.Node.Name, link.To.Node.Name }.Order(StringComparer.Ordinal)));
            Assert.All(picture.Parts, part => Assert.Contains(
                bands.SelectMany(band => band.Boxes), box => !box.IsAgain && ReferenceEquals(box.Node.Part, part)));
            Assert.All(bands, NothingCrosses);
        }
    }

    [Fact]
    public void A_master_cylinder_comes_first_and_each_part_is_as_near_to_it_as_can_be()
    {
        // A ring: master to far by two lines, and by one.
        var picture = RandomCar.Network(new Random(Seed), 1) with
        {
            Parts = [Part("far"), Part("tee"), Part("master") with { IsSource = true }],
            Runs = [Line("a", "master", "tee"), Line("b", "tee", "far"), Line("c", "master", "far")],
        };
        var root = Assert.Single(PlumbingTree.Of(picture));
        Assert.Equal("master", root.Name);
        Assert.Equal(["a", "c"], root.Branches.Select(branch => branch.Run.Name), StringComparer.Ordinal);
        Assert.All(root.Branches, branch => Assert.False(branch.IsAgain));
        var ring = Assert.Single(root.Branches.SelectMany(branch => branch.To.Branches));
        Assert.True(ring.IsAgain);
        Assert.Equal("b", ring.Run.Name);
    }

    private static string NameOf(PicturedEnd end) => end.Part ?? end.InWords;

    private static PicturedPart Part(string name) => new(name, "tee", IsSource: false, []);

    private static PicturedRun Line(string name, string from, string to) => new(
        BendSheet.Core.Plumbing.ConnectionKind.Line, name, string.Empty, new(from, from, IsNamed: true), new(to, to, IsNamed: true), false);

    /// <summary>In a gap between two columns each line has its own row, and where lines part, each part has rows of its own.</summary>
    private static void NothingCrosses(DiagramBand band)
    {
        Assert.All(band.Boxes.GroupBy(box => box.Column), column =>
        {
            var rows = column.Select(box => box.Row).Order().ToList();
            Assert.All(rows.Zip(rows.Skip(1)), pair => Assert.True(pair.Second - pair.First >= 1));
        });
        Assert.All(band.Links, link => Assert.Equal(link.From.Column + 1, link.To.Column));
        var trunks = band.Links.GroupBy(link => link.From)
            .Select(from => (from.Key.Column, Low: from.Min(link => link.To.Row), High: from.Max(link => link.To.Row))).ToList();
        foreach (var column in trunks.GroupBy(trunk => trunk.Column))
        {
            var sorted = column.OrderBy(trunk => trunk.Low).ToList();
            Assert.All(sorted.Zip(sorted.Skip(1)), pair => Assert.True(pair.First.High < pair.Second.Low));
        }
    }
}
