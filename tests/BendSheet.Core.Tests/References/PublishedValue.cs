using BendSheet.Core.Units;
using BendSheet.Core.Workshop;

namespace BendSheet.Core.Tests.References;

/// <summary>Figures and marks of the tables as the program has them.</summary>
internal static class PublishedValue
{
    /// <summary>A decimal figure or a fraction, in the row's unit.</summary>
    public static Length Length(string printed, string unit)
    {
        var parts = printed.Split('/');
        var figure = AssertGeometry.Number(parts[0]) / (parts.Length == 2 ? AssertGeometry.Number(parts[1]) : 1);
        return unit switch
        {
            "mm" => Core.Units.Length.FromMillimetres(figure),
            "in" => Core.Units.Length.FromInches(figure),
            _ => throw new ArgumentException($"`{unit}` is no unit of length.", nameof(unit)),
        };
    }

    public static Confidence Confidence(string mark) => mark switch
    {
        "CONFIRMED" => Core.Workshop.Confidence.Confirmed,
        "WEAK" => Core.Workshop.Confidence.SecondHand,
        _ => Core.Workshop.Confidence.FromMemory,
    };
}
