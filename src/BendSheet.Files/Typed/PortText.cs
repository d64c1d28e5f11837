using System.Globalization;
using BendSheet.Core.Fittings;
using BendSheet.Core.Units;

namespace BendSheet.Files.Typed;

/// <summary>
/// Ports as people type them: thread and seat, <c>3/8-24 flare 37</c>, or by a standard, <c>an-3</c>, <c>inverted 3/16</c>, <c>bubble
/// 4.75</c>, <c>1/8 npt</c>.
/// </summary>
public static class PortText
{
    private const string Unreadable =
        "is not a port: write its thread and seat, such as `3/8-24 flare 37`, `3/8-24 inverted 45`, `M10x1 bubble`, `1/8-27 taper` or "
            + "`M10x1 banjo`, or name a standard one, such as `an-3`, `inverted 3/16` or `bubble 4.75`";

    /// <summary>Reads a port.</summary>
    /// <param name="text">As typed.</param>
    /// <param name="port">What it is.</param>
    /// <returns>Null where it could be read; otherwise what is wrong, as the rest of a sentence about the text.</returns>
    public static string? Read(string text, out PortSpec port)
    {
        port = PortSpec.Unknown;
        List<string> words =
        [
            .. text.ToLowerInvariant().Replace("°", " ", StringComparison.Ordinal).Split(' ', StringSplitOptions.RemoveEmptyEntries),
        ];
        if (words is ["unknown"])
        {
            return null;
        }

        if (words.Count is 1 or 2 && Dash(string.Concat(words)) is { } dash)
        {
            return Dashed(dash, out port);
        }

        if (!TakeSeat(words, out var seat))
        {
            return Unreadable;
        }

        var rest = string.Join(' ', words);
        if (rest.Length == 0)
        {
            port = new(null, seat, null);
            return seat is null ? Unreadable : null;
        }

        if (ThreadText.Read(rest) is { } thread)
        {
            port = new(thread, seat, null);
            return null;
        }

        return seat is { } known ? OfSize(known, rest, out port) : Unreadable;
    }

    /// <summary>The figure after <c>an</c>; null where the text is something else.</summary>
    private static string? Dash(string word) =>
        word.StartsWith("an", StringComparison.Ordinal)
            && word[2..].TrimStart('-') is { Length: > 0 } figure
            && figure.All(char.IsAsciiDigit) ? figure : null;

    private static string? Dashed(string dash, out PortSpec port)
    {
        var row = int.TryParse(dash, NumberStyles.None, CultureInfo.InvariantCulture, out var number) ? StandardPort.OfDash(number) : null;
        port = row?.Port ?? PortSpec.Unknown;
        return row is null
            ? "has a dash size that does not exist: the sizes are "
                + string.Join(
                    ", ", StandardPort.All.Where(known => known.Dash > 0)
                        .Select(known => known.Dash.ToString(CultureInfo.InvariantCulture)))
            : null;
    }

    /// <summary>A seat by the size of its tube, or a pipe thread by its name.</summary>
    private static string? OfSize(Seat seat, string typed, out PortSpec port)
    {
        port = PortSpec.Unknown;
        if (LengthText.Read(typed, seat == Seat.Bubble ? LengthUnit.Millimetre : LengthUnit.Inch, out var millimetres) is not null
            || !double.IsFinite(millimetres))
        {
            return Unreadable;
        }

        if (StandardPort.Find(seat, Length.FromMillimetres(millimetres)).FirstOrDefault() is { } row)
        {
            port = row.Port;
            return null;
        }

        var notation = new LengthNotation(Imperial: seat != Seat.Bubble, 64);
        var sizes = StandardPort.All.Where(known => known.Seat == seat).Select(known => notation.Size(known.Size))
            .Distinct(StringComparer.Ordinal).ToList();
        return sizes.Count == 0
            ? Unreadable
            : $"has a size for which no thread is known here (known are {string.Join(", ", sizes)}): write the thread instead, such as "
                + $"`3/8-24 {seat.Word()}`";
    }

    /// <summary>Takes the words of the seat out; false where there are two.</summary>
    private static bool TakeSeat(List<string> words, out Seat? seat)
    {
        seat = null;
        var found = new List<Seat>();
        Take(words, found, Seat.Taper, "taper", "npt", "nptf");
        Take(words, found, Seat.Bubble, "bubble");
        Take(words, found, Seat.Banjo, "banjo");
        Take(words, found, Seat.Barb, "barb");
        Take(words, found, Seat.Bleed, "bleed", "bleeder");
        var inverted = words.RemoveAll(word => word is "inverted" or "inv") > 0;
        var flare = words.RemoveAll(word => word is "flare") > 0;
        words.RemoveAll(word => word is "deg" or "seat" or "thread");
        if (inverted)
        {
            words.Remove("45");
            found.Add(Seat.Inverted45);
        }
        else if (flare && found is not [Seat.Bubble])
        {
            var is37 = words.Remove("37");
            var is45 = words.Remove("45");
            if (is37 == is45)
            {
                return false;
            }

            found.Add(is37 ? Seat.Flare37 : Seat.Flare45);
        }

        seat = found is [var only] ? only : null;
        return found.Count <= 1;
    }

    private static void Take(List<string> words, List<Seat> found, Seat seat, params ReadOnlySpan<string> names)
    {
        foreach (var name in names)
        {
            if (words.Remove(name))
            {
                found.Add(seat);
                return;
            }
        }
    }
}
