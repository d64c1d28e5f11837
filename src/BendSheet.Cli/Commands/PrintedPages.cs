namespace BendSheet.Cli.Commands;

/// <summary>The kinds of pages that a print may have.</summary>
[Flags]
internal enum PrintedPages
{
    /// <summary>No pages.</summary>
    None = 0,

    /// <summary>All lines with their lengths, the tube and what to buy.</summary>
    Cover = 1,

    /// <summary>A sheet for each line.</summary>
    Sheets = 2,

    /// <summary>The work after the last bend, to tick off and to sign.</summary>
    Commissioning = 4,

    /// <summary>The car in one picture; it comes with the cover, too.</summary>
    Car = 8,

    /// <summary>Tags to wrap round finished lines.</summary>
    Tags = 16,

    /// <summary>What is printed where nothing was asked for.</summary>
    Usual = Cover | Sheets,

    /// <summary>What is about the car and not about a line.</summary>
    OfCar = Cover | Commissioning | Car | Tags,
}
