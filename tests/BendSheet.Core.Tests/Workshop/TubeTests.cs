using BendSheet.Core.Units;
using BendSheet.Core.Workshop;

namespace BendSheet.Core.Tests.Workshop;

public class TubeTests
{
    [Theory]
    [InlineData("4.75 mm")]
    [InlineData("4.76 mm")]
    [InlineData("4.8 mm")]
    [InlineData("3/16 in")]
    public void Brake_tube_is_one_size_by_all_its_names(string name) =>
        Assert.True(Of(Sizes[name]).IsOfSize(Lines.Mm(4.75)) && Of(Sizes[name]).IsOfSize(Length.FromInches(3.0 / 16)));

    [Fact]
    public void Five_sixteenths_and_eight_millimetres_are_two()
    {
        Assert.False(Of(Lines.Mm(8)).IsOfSize(Length.FromInches(5.0 / 16)));
        Assert.False(Of(Length.FromInches(5.0 / 16)).IsOfSize(Lines.Mm(8)));
    }

    [Fact]
    public void The_hole_is_the_diameter_less_two_walls()
    {
        AssertGeometry.Equal(3.34, (Of(Lines.Mm(4.76)) with { Wall = Lines.Mm(0.71) }).InsideDiameter!.Value.Millimetres);
        Assert.Null(Of(Lines.Mm(4.76)).InsideDiameter);
    }

    private static Dictionary<string, Length> Sizes { get; } = new(StringComparer.Ordinal)
    {
        ["4.75 mm"] = Lines.Mm(4.75),
        ["4.76 mm"] = Lines.Mm(4.76),
        ["4.8 mm"] = Lines.Mm(4.8),
        ["3/16 in"] = Length.FromInches(3.0 / 16),
    };

    private static Tube Of(Length od) => new("main", od, null, null, null);
}
