namespace BendSheet.Core.Sheet;

/// <summary>How far a line is.</summary>
public enum LineState
{
    /// <summary>It can be made.</summary>
    ToMake,

    /// <summary>It exists already.</summary>
    Made,

    /// <summary>It has no template yet.</summary>
    Rough,

    /// <summary>It cannot be made as typed.</summary>
    CannotBeMade,
}

/// <summary>A line on the cover.</summary>
/// <param name="Name">Of the line.</param>
/// <param name="EndA">Where it runs from.</param>
/// <param name="EndB">Where it runs to.</param>
/// <param name="Tube">Size and material.</param>
/// <param name="CutLength">What to cut off, or about how much where it is rough; null where nobody knows.</param>
/// <param name="State">How far it is.</param>
/// <param name="Fingerprint">Of its sheet; null where it has none.</param>
public sealed record CoverLine(
    string Name, string EndA, string EndB, string Tube, Figure? CutLength, LineState State, string? Fingerprint)
{
    /// <summary>In a word or two: <c>made</c>.</summary>
    public string StateInWords => State switch
    {
        LineState.Made => "made",
        LineState.Rough => "no template yet",
        LineState.CannotBeMade => "cannot be made as typed",
        _ => "to make",
    };

    /// <summary>The name on the page, where a line without a sheet says why it has none.</summary>
    public string NameOnPage => Fingerprint is null ? $"{Name} ({StateInWords})" : Name;

    /// <summary>Both ends on the page, as on the line's sheet where it has one.</summary>
    public string EndsOnPage => Fingerprint is null ? EndsAtTerminal : EndWords.WithLetters(EndA, EndB);

    /// <summary>Both ends in the terminal.</summary>
    public string EndsAtTerminal => $"{EndA} → {EndB}";
}
