namespace BendSheet.Core.Fittings;

/// <summary>What keeps the fluid in where two pieces meet.</summary>
public enum Seat
{
    /// <summary>A cone of 37° on the port, the nut screwed over it.</summary>
    Flare37,

    /// <summary>A cone of 45° on the port, the nut screwed over it.</summary>
    Flare45,

    /// <summary>A cone of 45° inside the port, the nut screwed into it.</summary>
    Inverted45,

    /// <summary>The bottom of the port, against which the nut presses a bubble flare.</summary>
    Bubble,

    /// <summary>The taper thread itself, with sealant.</summary>
    Taper,

    /// <summary>A flat face with a washer on each side of an eye.</summary>
    Banjo,

    /// <summary>A ribbed end that a hose is pushed over.</summary>
    Barb,

    /// <summary>A bleed screw's: nothing is connected to it.</summary>
    Bleed,
}

/// <summary>How seats are written, and what goes on them.</summary>
public static class Seats
{
    /// <summary>As it is typed after the thread.</summary>
    public static string Word(this Seat seat) => seat switch
    {
        Seat.Flare37 => "flare 37",
        Seat.Flare45 => "flare 45",
        Seat.Inverted45 => "inverted 45",
        Seat.Bubble => "bubble",
        Seat.Taper => "taper",
        Seat.Banjo => "banjo",
        Seat.Barb => "barb",
        _ => "bleed",
    };

    /// <summary>In a sentence, with its article.</summary>
    public static string InWords(this Seat seat) => seat switch
    {
        Seat.Flare37 => "a 37° cone",
        Seat.Flare45 => "a 45° cone with the nut over it",
        Seat.Inverted45 => "an inverted 45° seat",
        Seat.Bubble => "a bubble-flare seat",
        Seat.Taper => "a taper thread",
        Seat.Banjo => "a flat face for a banjo",
        Seat.Barb => "a barb for a hose",
        _ => "a bleed screw",
    };

    /// <summary>The angle of its cone, each side, in degrees; null where it has none.</summary>
    public static int? Cone(this Seat seat) => seat switch
    {
        Seat.Flare37 => 37,
        Seat.Flare45 or Seat.Inverted45 => 45,
        _ => null,
    };

    /// <summary>
    /// The seats that a flared tube end is made for. A 45° flare goes on a cone and into an inverted seat: the nut makes the difference.
    /// </summary>
    public static IReadOnlyList<Seat> For(Flare flare) => flare switch
    {
        Flare.Single37 => [Seat.Flare37],
        Flare.Single45 or Flare.Double45 => [Seat.Inverted45, Seat.Flare45],
        Flare.Bubble => [Seat.Bubble],
        _ => [],
    };

    /// <summary>What a fitting says in a file for this seat; null where no flare goes there.</summary>
    public static string? FlareWords(this Seat seat) => seat switch
    {
        Seat.Flare37 => "single 37",
        Seat.Flare45 or Seat.Inverted45 => "double 45",
        Seat.Bubble => "bubble",
        _ => null,
    };
}
