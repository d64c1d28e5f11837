namespace BendSheet.Files.Reading;

/// <summary>Words that people type for a choice of the format, out of other programs or everyday speech.</summary>
internal static class ChoiceSynonyms
{
    /// <summary>The choice that was meant; null where the word is no common one for any of them.</summary>
    public static string? Meant(string typed, IEnumerable<string> choices) =>
        choices.FirstOrDefault(choice => IsFor(typed.Trim().TrimEnd('.').ToLowerInvariant(), choice));

    private static bool IsFor(string typed, string choice) => choice switch
    {
        // YAML 1.1 took these for true and false, and many programs still do.
        "true" => typed is "yes" or "y" or "on" or "1" or "x" or "✓" or "done" or "made" or "ja" or "oui" or "si",
        "false" => typed is "no" or "n" or "off" or "0" or "not yet" or "nein" or "non",
        "mm" => typed is "millimetre" or "millimetres" or "millimeter" or "millimeters" or "mms" or "metric" or "si",
        "cm" => typed is "centimetre" or "centimetres" or "centimeter" or "centimeters" or "cms",
        "m" => typed is "metre" or "metres" or "meter" or "meters",
        "in" => typed is "inch" or "inches" or "ins" or "\"" or "″" or "”" or "imperial",
        "ft" => typed is "foot" or "feet" or "'" or "′" or "’",
        "a4" => typed is "din a4" or "a 4" or "din-a4",
        "letter" => typed is "us letter" or "us-letter" or "us",
        _ => false,
    };
}
