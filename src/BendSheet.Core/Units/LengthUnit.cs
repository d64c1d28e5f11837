namespace BendSheet.Core.Units;

/// <summary>The units a length may be typed in.</summary>
public enum LengthUnit
{
    /// <summary>mm</summary>
    Millimetre,

    /// <summary>cm</summary>
    Centimetre,

    /// <summary>m</summary>
    Metre,

    /// <summary>in</summary>
    Inch,

    /// <summary>ft</summary>
    Foot,
}

/// <summary>What a <see cref="LengthUnit"/> is worth and how it is written.</summary>
public static class LengthUnits
{
    /// <summary>Millimetres in one of the unit, exact.</summary>
    public static double InMillimetres(this LengthUnit unit) => unit switch
    {
        LengthUnit.Millimetre => 1,
        LengthUnit.Centimetre => 10,
        LengthUnit.Metre => 1000,
        LengthUnit.Inch => Length.MillimetresPerInch,
        _ => 12 * Length.MillimetresPerInch,
    };

    /// <summary>Whether sheets in this unit show inches as fractions rather than millimetres.</summary>
    public static bool IsImperial(this LengthUnit unit) => unit is LengthUnit.Inch or LengthUnit.Foot;

    /// <summary>As written in a file: mm, cm, m, in, ft.</summary>
    public static string Symbol(this LengthUnit unit) => unit switch
    {
        LengthUnit.Millimetre => "mm",
        LengthUnit.Centimetre => "cm",
        LengthUnit.Metre => "m",
        LengthUnit.Inch => "in",
        _ => "ft",
    };
}
