namespace BendSheet.Sheets.FullSize;

/// <summary>Pages drawn at full size (1:1), to lay the tube on.</summary>
[Flags]
public enum FullSizePages
{
    /// <summary>The line's own sheet only.</summary>
    None = 0,

    /// <summary>The straight tube in tiles, with its marks.</summary>
    Strips = 1,

    /// <summary>Every different bend, as a curve to lay it on and a wedge to hold into it.</summary>
    Gauges = 2,

    /// <summary>A dial to put round the tube.</summary>
    Dial = 4,

    /// <summary>Where to drill for clips along a straight run.</summary>
    Clips = 8,

    /// <summary>All of them.</summary>
    All = Strips | Gauges | Dial | Clips,
}
