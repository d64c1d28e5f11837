namespace BendSheet.Core.Workshop;

/// <summary>One of a tube's two ends, as they are lettered on it.</summary>
public enum TubeEnd
{
    /// <summary>The end the template starts at.</summary>
    A,

    /// <summary>The end it runs to.</summary>
    B,
}
