using BendSheet.Core.Workshop;

namespace BendSheet.Core.Tests.Workshop;

public class TubeMaterialTests
{
    [Theory]
    [InlineData("steel", TubeMaterial.Steel)]
    [InlineData("Mild Steel, zinc plated", TubeMaterial.Steel)]
    [InlineData("copper-coated steel", TubeMaterial.Steel)]
    [InlineData("steel, nickel-copper plated", TubeMaterial.Steel)]
    [InlineData("stainless steel", TubeMaterial.StainlessSteel)]
    [InlineData("stainless", TubeMaterial.StainlessSteel)]
    [InlineData("aluminium", TubeMaterial.Aluminium)]
    [InlineData("5052-O aluminum alloy", TubeMaterial.Aluminium)]
    [InlineData("copper", TubeMaterial.Copper)]
    [InlineData("plain copper, soft", TubeMaterial.Copper)]
    [InlineData("copper-nickel", TubeMaterial.CopperNickel)]
    [InlineData("Copper Nickel 90/10", TubeMaterial.CopperNickel)]
    [InlineData("nickel-copper", TubeMaterial.CopperNickel)]
    [InlineData("CuNi10Fe1Mn", TubeMaterial.CopperNickel)]
    [InlineData("cupronickel", TubeMaterial.CopperNickel)]
    public void Is_read_out_of_a_persons_words(string words, TubeMaterial material) =>
        Assert.Equal(material, TubeMaterials.Recognize(words));

    [Theory]
    [InlineData(null)]
    [InlineData("")]
    [InlineData("from the roll on the wall")]
    [InlineData("copper or steel")]
    [InlineData("not copper")]
    [InlineData("90/10 copper")]
    [InlineData("copper alloy")]
    [InlineData("aluminium bronze")]
    [InlineData("copper clad aluminium")]
    [InlineData("titanium")]
    [InlineData("steeliness")]
    public void Is_not_guessed(string? words) => Assert.Null(TubeMaterials.Recognize(words));
}
