namespace BendSheet.Core.Bench;

/// <summary>Where a clip may stand. Millimetres along the finished tube from the finished end A.</summary>
internal readonly record struct FreePlace(double From, double To)
{
    /// <summary>The place in it that is nearest to the one wanted.</summary>
    public double NearestTo(double wanted) => Math.Clamp(wanted, From, To);
}

/// <summary>
/// Spreads clips over the free places: first and last as near to where they are wanted as the longest way to an end allows; between them as
/// few as can be; then each that is alone on its straight as near to its middle as the longest way between two allows, and several on one
/// straight evenly. All in millimetres.
/// </summary>
internal static class ClipPlaces
{
    private const double Noise = 1e-9;

    /// <summary>Enough for a hundred clips on one straight to come to rest within a pen line; a few do so in a handful.</summary>
    private const int MostRounds = 500;

    /// <summary>Each of several on one straight goes further than to the middle of its neighbours, so that long rows come to rest soon:
    /// successive over-relaxation (D. M. Young, Iterative Solution of Large Linear Systems, 1971).</summary>
    private const double Further = 1.8;

    /// <summary>The places, from end A.</summary>
    /// <param name="free">Where clips may stand, from end A, apart from each other.</param>
    /// <param name="length">Of the finished tube.</param>
    /// <param name="every">The longest way between two.</param>
    /// <param name="fromEnds">Wanted for the first and the last.</param>
    /// <param name="width">Of a clip: nearer to each other than this, two would overlap.</param>
    public static List<double> Of(List<FreePlace> free, double length, double every, double fromEnds, double width)
    {
        var places = Fewest(free, length, every, fromEnds);
        DropOverlapping(places, free, (length, every, width));
        TowardsMiddles(places, free, every);
        return places;
    }

    private static List<double> Fewest(List<FreePlace> free, double length, double every, double fromEnds)
    {
        if (free.Count == 0)
        {
            return [];
        }

        var first = Nearest(Within(free, 0, every), fromEnds) ?? Nearest(free, fromEnds)!.Value;
        var last = Nearest(Within(free, length - every, length), length - fromEnds) ?? Nearest(free, length - fromEnds)!.Value;
        if (last <= first)
        {
            var only = Nearest(free, length / 2)!.Value;
            if (only <= every && length - only <= every)
            {
                return [only];
            }

            (first, last) = (last, first);
        }

        var places = new List<double>();
        var run = new List<FreePlace>();
        foreach (var place in Within(free, first, last))
        {
            // Where a stretch without a place is longer than the clips may be apart, the best is a clip on each side.
            if (run.Count > 0 && place.From - run[^1].To > every + Noise)
            {
                places.AddRange(Run(run, every));
                run.Clear();
            }

            run.Add(place);
        }

        places.AddRange(Run(run, every));

        // The clip beside such a stretch also does as the first or the last one, where it stands hardly further from the end.
        if (places is [var a, var besideA, var beyondA, ..]
            && beyondA - besideA > every + Noise
            && besideA - a < fromEnds / 2
            && besideA <= every)
        {
            places.RemoveAt(0);
        }

        if (places is [.., var beyondB, var besideB, var b]
            && besideB - beyondB > every + Noise
            && b - besideB < fromEnds / 2
            && length - besideB <= every)
        {
            places.RemoveAt(places.Count - 1);
        }

        return places;
    }

    /// <summary>
    /// Of two clips that overlap one goes, if that leaves no way too long; or else one moves clear of the other; or else one clip between
    /// them takes their place.
    /// </summary>
    private static void DropOverlapping(List<double> places, List<FreePlace> free, (double Length, double Every, double Width) wish)
    {
        for (var i = places.Count - 1; i > 0; i--)
        {
            var (first, second) = (places[i - 1], places[i]);
            if (second - first >= wish.Width - Noise)
            {
                continue;
            }

            var before = i > 1 ? places[i - 2] : 0;
            var behind = i + 1 < places.Count ? places[i + 1] : wish.Length;
            if (second - before <= wish.Every + Noise)
            {
                places.RemoveAt(i - 1);
            }
            else if (behind - first <= wish.Every + Noise)
            {
                places.RemoveAt(i);
            }
            else if (Within(free, second - wish.Every, second - wish.Width) is [.., var nearer] && nearer.To >= before + wish.Width)
            {
                places[i - 1] = nearer.To;
            }
            else if (Within(free, first + wish.Width, first + wish.Every) is [var further, ..] && further.From <= behind - wish.Width)
            {
                places[i] = further.From;
            }
            else
            {
                places[i - 1] = (first + second) / 2;
                places.RemoveAt(i);
            }
        }
    }

    /// <summary>Moves what is between the first and the last, never so that a way that is too long becomes longer.</summary>
    private static void TowardsMiddles(List<double> places, List<FreePlace> free, double every)
    {
        var on = places.ConvertAll(place => free.FindIndex(straight => place <= straight.To + Noise));
        for (var (round, moved) = (0, true); moved && round < MostRounds; round++)
        {
            moved = false;
            for (var i = 1; i + 1 < places.Count; i++)
            {
                var straight = free[on[i]];
                var isAlone = on[i - 1] != on[i] && on[i + 1] != on[i];
                var wanted = isAlone
                    ? (straight.From + straight.To) / 2
                    : places[i] + (Further * (((places[i - 1] + places[i + 1]) / 2) - places[i]));
                var least = Math.Max(straight.From, places[i + 1] - Math.Max(every, places[i + 1] - places[i]));
                var most = Math.Min(straight.To, places[i - 1] + Math.Max(every, places[i] - places[i - 1]));
                var place = Math.Max(Math.Min(wanted, most), least);
                if (Math.Abs(place - places[i]) > Noise)
                {
                    places[i] = place;
                    moved = true;
                }
            }
        }
    }

    /// <summary>
    /// From the first place to the last one of a run in which no step need be longer than wanted; where the two are one, that place twice.
    /// </summary>
    private static List<double> Run(List<FreePlace> free, double every)
    {
        var start = free[0].From;
        var end = free[^1].To;
        var between = Steps(free, every)!.Value - 1;
        var step = ShortestStep(free, between, every);

        // What each clip must at least reach, so that those after it can.
        var atLeast = new double[between + 2];
        atLeast[^1] = end;
        for (var i = between; i >= 1; i--)
        {
            atLeast[i] = free.First(place => place.To >= atLeast[i + 1] - step - Noise).NearestTo(atLeast[i + 1] - step);
        }

        var places = new List<double> { start };
        for (var i = 1; i <= between; i++)
        {
            var even = start + (i * (end - start) / (between + 1));
            places.Add(Nearest(Within(free, atLeast[i], Math.Max(atLeast[i], places[^1] + step)), even) ?? atLeast[i]);
        }

        return [.. places, end];
    }

    /// <summary>The least limit for a step with which so many clips between the first and the last will do.</summary>
    private static double ShortestStep(List<FreePlace> free, int between, double every)
    {
        bool Does(double step) => Steps(free, step) is { } steps && steps <= between + 1;

        var tooShort = (free[^1].To - free[0].From) / (between + 1);
        if (Does(tooShort))
        {
            return tooShort;
        }

        var enough = every;
        while (enough - tooShort > Noise)
        {
            var middle = (tooShort + enough) / 2;
            (tooShort, enough) = Does(middle) ? (tooShort, middle) : (middle, enough);
        }

        return enough;
    }

    /// <summary>
    /// Steps from the first place to the last one, each as long as it may be, which takes the fewest; null where a step leads nowhere.
    /// </summary>
    private static int? Steps(List<FreePlace> free, double step)
    {
        var at = free[0].From;
        var end = free[^1].To;
        var place = 0;
        for (var steps = 1; ; steps++)
        {
            var reach = at + step + Noise;
            if (reach >= end)
            {
                return steps;
            }

            while (place + 1 < free.Count && free[place + 1].From <= reach)
            {
                place++;
            }

            var next = Math.Min(reach - Noise, free[place].To);
            if (next <= at + Noise)
            {
                return null;
            }

            at = next;
        }
    }

    private static List<FreePlace> Within(List<FreePlace> free, double from, double to) =>
    [
        .. free.Where(place => place.To >= from && place.From <= to)
        .Select(place => new FreePlace(Math.Max(place.From, from), Math.Min(place.To, to))),
    ];

    /// <summary>The place nearest to the one wanted; of two the one nearer to A. Null where there is none.</summary>
    private static double? Nearest(List<FreePlace> free, double wanted) =>
        free.Count == 0 ? null : free.Select(place => place.NearestTo(wanted)).MinBy(place => Math.Abs(place - wanted));
}
