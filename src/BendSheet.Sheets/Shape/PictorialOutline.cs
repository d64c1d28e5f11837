using System.Collections.Immutable;
using BendSheet.Core.Sheet;

namespace BendSheet.Sheets.Shape;

/// <summary>The centreline in the pictorial view, looked at from where the sheet looks, for whoever draws it with other means.</summary>
/// <param name="Points">From A to B, in the shape's own millimetres, y downwards; bends as short straight pieces.</param>
/// <param name="BendMiddles">Index of the point in the middle of each bend.</param>
public sealed record PictorialOutline(ImmutableArray<(double X, double Y)> Points, ImmutableArray<int> BendMiddles)
{
    /// <summary>Of a line's shape.</summary>
    public static PictorialOutline Of(SheetContent sheet)
    {
        var shape = Polyline.Of(sheet.Shape);
        var projection = ViewDirection.Best(sheet.Shape, sheet.TubeDiameter.Millimetres, sheet.LiesOnCar);
        return new([.. shape.Points.Select(projection.Of).Select(point => (point.X, point.Y))], [.. shape.BendMiddles]);
    }
}
