namespace BendSheet.Core.Workshop;

/// <summary>What published figures call a tube's material.</summary>
public enum TubeMaterial
{
    /// <summary>Steel, whatever it is coated with.</summary>
    Steel,

    /// <summary>Corrosion-resistant steel.</summary>
    StainlessSteel,

    /// <summary>Aluminium and its alloys.</summary>
    Aluminium,

    /// <summary>Plain copper.</summary>
    Copper,

    /// <summary>Copper-nickel.</summary>
    CopperNickel,
}

/// <summary>Reads the material out of a person's own words.</summary>
public static class TubeMaterials
{
    private static readonly string[] Steels = ["steel"];
    private static readonly string[] Stainless = ["stainless", "inox"];
    private static readonly string[] Nickel = ["nickel", "cupronickel", "cuni"];
    private static readonly string[] OtherAlloys = ["bronze", "brass", "plated", "coated", "clad"];
    private static readonly string[] Doubt = ["not", "no", "or"];

    /// <summary>The material; null where the words leave a doubt, for then no figure is better than a wrong one.</summary>
    public static TubeMaterial? Recognize(string? words)
    {
        var letters = (words ?? string.Empty).Select(sign => char.IsLetter(sign) ? char.ToLowerInvariant(sign) : ' ');
        var named = string.Concat(letters).Split(' ').ToHashSet(StringComparer.Ordinal);
        var aluminium = named.Contains("aluminium") || named.Contains("aluminum");
        var copper = named.Contains("copper");
        return named switch
        {
            _ when named.Overlaps(Doubt) => null,
            _ when named.Overlaps(Stainless) => TubeMaterial.StainlessSteel,
            // Steel is coated with copper, aluminium and nickel; none of them is coated with steel.
            _ when named.Overlaps(Steels) => TubeMaterial.Steel,
            _ when named.Overlaps(Nickel) => aluminium ? null : TubeMaterial.CopperNickel,
            _ when aluminium => copper || named.Overlaps(OtherAlloys) ? null : TubeMaterial.Aluminium,
            // A figure beside it may name an alloy: 90/10 is copper-nickel.
            _ when copper =>
                named.Overlaps(OtherAlloys) || named.Contains("alloy") || words!.Any(char.IsDigit) ? null : TubeMaterial.Copper,
            _ => null,
        };
    }

    /// <summary>The material in a sentence.</summary>
    public static string InWords(this TubeMaterial material) => material switch
    {
        TubeMaterial.StainlessSteel => "stainless steel",
        TubeMaterial.Aluminium => "aluminium",
        TubeMaterial.Copper => "plain copper",
        TubeMaterial.CopperNickel => "copper-nickel",
        _ => "steel",
    };
}
