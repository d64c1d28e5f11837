using BendSheet.Core.Templates;

namespace BendSheet.Files.Reading;

/// <summary>A route whose figures are each allowed may still come to a length that no line has.</summary>
internal static class RouteRange
{
    /// <summary>The route; null after a finding where it comes to more than 100 m of tube.</summary>
    public static Route? Checked(Route route, FileContext context)
    {
        var legs = route.Legs.Select(leg => (Mm: leg.Measured.Millimetres, leg.At));
        var arcs = route.Bends.Select(bend => (Mm: bend.Turn.Radians * bend.Bender.Radius.Millimetres, At: bend.TurnAt));
        var parts = legs.Concat(arcs).ToList();
        var whole = parts.Sum(part => part.Mm);
        if (whole <= Range.Longest)
        {
            return route;
        }

        context.Report(FileRules.OutOfRange.Error(
            parts.MaxBy(part => part.Mm).At,
            FormattableString.Invariant($"the line comes to {whole / 1000:0} m of tube, and at most 100 m can be: ")
                + "this is its longest part; look at it, and at the units"));
        return null;
    }
}
