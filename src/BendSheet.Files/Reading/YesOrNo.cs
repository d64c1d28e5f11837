namespace BendSheet.Files.Reading;

/// <summary>How yes and no are typed.</summary>
internal static class YesOrNo
{
    public static IReadOnlyList<(bool Value, string Word)> Choices { get; } = [(true, "true"), (false, "false")];
}
