using BendSheet.Core.Workshop;

namespace BendSheet.Cli.Asking;

/// <summary>
/// What was answered so far, as it was typed. Null is a question that was not asked yet; empty is one that was left out.
/// </summary>
internal sealed class Said
{
    public string? Units { get; set; }

    public string? Od { get; set; }

    public string? Wall { get; set; }

    public string? Material { get; set; }

    public string? Radius { get; set; }

    public string? Mark { get; set; }

    public string? Grip { get; set; }

    public string? Follow { get; set; }

    /// <summary>Pulled to, and came back to.</summary>
    public List<SaidTest> Tests { get; } = [];

    /// <summary>No further test bend.</summary>
    public bool TestsDone { get; set; }

    public string? WireRadius { get; set; }

    public string? WireDiameter { get; set; }

    public List<SaidFitting> Fittings { get; } = [];

    public List<SaidLine> Lines { get; } = [];

    /// <summary>One more line is asked for.</summary>
    public bool Another { get; set; }

    /// <summary>Nothing more is to be asked.</summary>
    public bool Finished { get; set; }

    /// <summary>The line that is being asked for; null before the first.</summary>
    public SaidLine? Line => Lines.Count == 0 ? null : Lines[^1];

    /// <summary>The fitting of which not everything is known yet.</summary>
    public SaidFitting? OpenFitting => Fittings.Find(fitting => fitting.Straight is null);

    /// <summary>Whether any line is measured in a way that asks for the wire.</summary>
    public bool Needs(Func<MeasuredTo, bool> needs) => Lines.Exists(
        line => MeasuredToWords.All.Any(known => string.Equals(known.Word, line.Measured, StringComparison.OrdinalIgnoreCase)
            && needs(known.Habit)));
}

/// <summary>A test bend.</summary>
internal sealed class SaidTest(string pull)
{
    public string Pull { get; } = pull;

    public string? Got { get; set; }
}

/// <summary>A fitting.</summary>
internal sealed class SaidFitting(string name)
{
    public string Name { get; } = name;

    public string? Flare { get; set; }

    public string? Takes { get; set; }

    public string? Nut { get; set; }

    public string? Sleeve { get; set; }

    public string? Straight { get; set; }
}

/// <summary>A row: the leg up to a bend, the bend, and the roll before it.</summary>
internal sealed class SaidRow(string leg)
{
    public string Leg { get; } = leg;

    /// <summary>Empty where the leg leads to end B.</summary>
    public string? Bend { get; set; }

    /// <summary>The file's words for several bends at once; none for a single bend.</summary>
    public IReadOnlyList<(string Word, string Value)> Several { get; set; } = [];

    /// <summary>How many bends the row stands for.</summary>
    public int Bends { get; set; }

    public string? Roll { get; set; }

    /// <summary>The notes typed with any of the row's answers.</summary>
    public string Note { get; set; } = string.Empty;
}

/// <summary>A line.</summary>
internal sealed class SaidLine(string measured)
{
    public string Measured { get; } = measured;

    public string? Name { get; set; }

    public List<SaidRow> Rows { get; } = [];

    /// <summary>How many bends were said.</summary>
    public int Bends => Rows.Sum(row => row.Bends);

    /// <summary>Measured across the wire: between what, and what it came to.</summary>
    public List<(string What, string Reading)> Taped { get; } = [];

    /// <summary>Nothing more is taped.</summary>
    public bool TapingDone { get; set; }

    /// <summary>What is to be taped next; null until it is asked for.</summary>
    public ToTape? ToTape { get; set; }

    public SaidEnd From { get; } = new();

    public SaidEnd To { get; } = new();

    /// <summary>The last leg leads to end B.</summary>
    public bool HasEnded => Rows is [.., { Bend: "" }];
}

/// <summary>An end of a line.</summary>
internal sealed class SaidEnd
{
    public string? At { get; set; }

    public string? Fitting { get; set; }

    /// <summary>Tube left on, to be cut on the car.</summary>
    public string? Trim { get; set; }
}
