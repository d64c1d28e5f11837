namespace BendSheet.Core.Workshop;

/// <summary>How sure a published figure is. Only a confirmed one proves anything; no finding that rests on one is an error.</summary>
public enum Confidence
{
    /// <summary>Seen in the text of the source that is named.</summary>
    Confirmed,

    /// <summary>Seen only in somebody else's summary of the source.</summary>
    SecondHand,

    /// <summary>Known, but not seen in any text.</summary>
    FromMemory,
}

/// <summary>Where a published figure stands.</summary>
/// <param name="Name">The publication, as a person would look for it.</param>
/// <param name="Confidence">How sure the figure is.</param>
public sealed record PublishedSource(string Name, Confidence Confidence)
{
    /// <summary>The publication and, where the figure was not seen in it, that: <c>MS33584, from memory</c>.</summary>
    public string InWords => Confidence switch
    {
        Confidence.SecondHand => Name + ", second-hand",
        Confidence.FromMemory => Name + ", from memory",
        _ => Name,
    };

    /// <summary>Whether a person should look the figure up before resting on it.</summary>
    public bool MustBeChecked => Confidence != Confidence.Confirmed;
}
