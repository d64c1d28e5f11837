using System.Runtime.CompilerServices;
using BendSheet.Core.Units;
using BendSheet.Core.Workshop;

namespace BendSheet.Core.Bench;

/// <summary>Where the arc factor that is used comes from.</summary>
public enum ArcFactorSource
{
    /// <summary>Nobody typed one and no test piece was made: it is 1.</summary>
    Assumed,

    /// <summary>By least squares from test pieces.</summary>
    Learned,

    /// <summary>Somebody typed it, which counts more than test pieces.</summary>
    Typed,
}

/// <summary>
/// A tool as it works on one tube: what is used for pull angles and for the tube that its bends take up. The one place where this is
/// chosen.
/// </summary>
/// <param name="Springback">From the test bends that count for the tube.</param>
/// <param name="Gain">From the test pieces that count for the tube; null without any. Not used where a factor was typed.</param>
/// <param name="ArcFactor">Tube that a bend takes up, as part of R·bend: the factor that is used.</param>
/// <param name="Source">Where it comes from.</param>
public sealed record BenderCalibration(Springback Springback, ToolGain? Gain, double ArcFactor, ArcFactorSource Source)
{
    /// <summary>Each tool is asked about for every bend of every line: what its tests say is worked out once.</summary>
    private static readonly ConditionalWeakTable<Bender, ConditionalWeakTable<Tube, BenderCalibration>> Known = [];

    private static BenderCalibration Untested { get; } = new(Springback.Of([]), null, 1, ArcFactorSource.Assumed);

    /// <summary>The tool on a tube.</summary>
    /// <param name="bender">With its tests.</param>
    /// <param name="tube">Null asks for what holds for every tube.</param>
    public static BenderCalibration Of(Bender bender, Tube? tube)
    {
        if (bender.Tests.IsEmpty)
        {
            return bender.ArcFactor is { } known ? Untested with { ArcFactor = known, Source = ArcFactorSource.Typed } : Untested;
        }

        return tube is null ? Tested(bender, null) : Known.GetOrCreateValue(bender).GetValue(tube, one => Tested(bender, one));
    }

    private static BenderCalibration Tested(Bender bender, Tube? tube)
    {
        var tests = bender.Tests.Where(test => test.CountsFor(tube)).ToList();
        var springback = Springback.Of(tests);
        var gain = ToolGain.Of(tests, bender.Radius);
        return bender.ArcFactor is { } typed ? new(springback, gain, typed, ArcFactorSource.Typed)
            : gain is not null ? new(springback, gain, gain.ArcFactor, ArcFactorSource.Learned)
            : new(springback, null, 1, ArcFactorSource.Assumed);
    }

    /// <summary>What to pull to for a bend.</summary>
    public Angle Pull(Angle bend) => Springback.Pull(bend);
}
