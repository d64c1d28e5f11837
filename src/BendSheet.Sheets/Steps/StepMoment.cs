namespace BendSheet.Sheets.Steps;

/// <summary>What is drawn of a pull.</summary>
internal enum StepMoment
{
    /// <summary>Before it, and dashed after it.</summary>
    Pull,

    /// <summary>Before it.</summary>
    Ready,

    /// <summary>After it.</summary>
    Made,
}
