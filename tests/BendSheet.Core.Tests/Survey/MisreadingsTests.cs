using BendSheet.Core.Survey;
using BendSheet.Core.Templates;

namespace BendSheet.Core.Tests.Survey;

public class MisreadingsTests
{
    /// <summary>By hand: 169 has 619 and 196 for neighbours that were exchanged, and no wire turns by 619°.</summary>
    [Fact]
    public void Nobody_reads_more_than_a_whole_turn_off_a_wire()
    {
        Assert.Equal([196], Digits(ObservationKind.Rotation, 169));
        Assert.Equal([-196], Digits(ObservationKind.Rotation, -169));
        Assert.Equal([169], Digits(ObservationKind.Rotation, 619));
        Assert.Contains(691, Digits(ObservationKind.Leg, 619));
    }

    [Fact]
    public void A_bend_is_less_than_a_half_turn() => Assert.Equal([73], Digits(ObservationKind.Bend, 37));

    private static IEnumerable<double> Digits(ObservationKind kind, double typed)
    {
        var unit = kind == ObservationKind.Leg ? 1 : Math.PI / 180;
        return Misreadings.Of(kind, typed * unit)
            .Where(one => one.Kind == SlipKind.Digits)
            .Select(one => Math.Round(one.Instead / unit, 6));
    }
}
