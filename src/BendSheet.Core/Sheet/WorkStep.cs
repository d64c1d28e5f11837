using System.Collections.Immutable;
using BendSheet.Core.Bench;

namespace BendSheet.Core.Sheet;

/// <summary>What a step of the order of work is about.</summary>
internal enum WorkKind
{
    /// <summary>Some bends are made already.</summary>
    Begun,

    /// <summary>Cutting off the roll.</summary>
    Cut,

    /// <summary>Hardware and flare of end A.</summary>
    EndA,

    /// <summary>Hardware and flare of end B.</summary>
    EndB,

    /// <summary>Marks and pen line.</summary>
    Mark,

    /// <summary>Turning the tube end for end.</summary>
    Flip,

    /// <summary>Bends.</summary>
    Bends,

    /// <summary>Checking the bent piece.</summary>
    Check,

    /// <summary>Offering up and trimming.</summary>
    Trim,

    /// <summary>Measuring, blowing through, capping.</summary>
    Finish,
}

/// <summary>A step of the order of work.</summary>
/// <param name="Kind">What it is about.</param>
/// <param name="Text">To be ticked.</param>
internal sealed record WorkStep(WorkKind Kind, string Text)
{
    /// <summary>The bends that it makes, in that order.</summary>
    public ImmutableArray<BenchBend> Bends { get; init; } = [];
}
