using BendSheet.Core.Sheet;
using BendSheet.Sheets.Drawing;

namespace BendSheet.Sheets.FullSize;

/// <summary>What a tile leaves free at its two sides, and how it is cut and glued there.</summary>
internal static class TileJoints
{
    /// <summary>Left of the tile's start, in millimetres: cut away at a joint, the letter A at the end.</summary>
    public const double LeftRoom = 6;

    /// <summary>Right of a joint, in millimetres: covered by the next tile.</summary>
    public const double FlapWidth = 12;

    /// <summary>Below the last thing on a tile, in millimetres.</summary>
    public const double Foot = 3;

    /// <summary>Words and bar keep so many millimetres clear of the line that is cut.</summary>
    public const double Inset = 2;

    /// <summary>The lines at both sides of a tile, with what is done there.</summary>
    /// <param name="canvas">With its left side at the tile's start.</param>
    /// <param name="tile">Which.</param>
    /// <param name="top">Of the tile.</param>
    /// <param name="height">Of the tile.</param>
    /// <param name="cutsFirst">The first one is cut along its start too.</param>
    public static void Draw(Canvas canvas, StripTile tile, double top, double height, bool cutsFirst = false)
    {
        if (!tile.First || cutsFirst)
        {
            canvas.Line(0, top, 0, top + height);
            canvas.Text(TileWords.Cut, TextStyle.Small, -0.6, top + TextStyle.Small.Ascent, Align.Right);
        }

        if (!tile.Last)
        {
            var joint = (tile.End - tile.Start).Millimetres;
            canvas.Line(joint, top, joint, top + height);
            var words = TileWords.OnFlap(tile.Number + 1);
            for (var i = 0; i < words.Count; i++)
            {
                canvas.Text(
                    words[i], TextStyle.Small, joint + (FlapWidth / 2), top + 4 + TextStyle.Small.Ascent
                        + (i * TextStyle.Small.LineHeight), Align.Centre);
            }
        }
    }

    /// <summary>Where tiles are cut apart.</summary>
    /// <param name="page">The whole type area.</param>
    /// <param name="tile">Which.</param>
    /// <param name="bottom">Of the tile.</param>
    public static void DrawFoot(Canvas page, StripTile tile, double bottom)
    {
        if (tile.Count > 1)
        {
            page.DashedLine(0, bottom - 1, page.Width, bottom - 1);
        }
    }
}
