using BendSheet.Sheets.Drawing;
using BendSheet.Sheets.Shape;

namespace BendSheet.Sheets.Picture;

/// <summary>A name, or a number in a circle or a box, with a leader to what it belongs to.</summary>
/// <param name="Item">What it belongs to.</param>
/// <param name="Text">Printable.</param>
/// <param name="IsName">Name and length; otherwise the number.</param>
/// <param name="Box">White ground and all, on paper.</param>
/// <param name="Anchor">Where the leader begins.</param>
internal sealed record PictureLabel(PictureItem Item, string Text, bool IsName, PageBox Box, PagePoint Anchor)
{
    /// <summary>Between two labels, in millimetres.</summary>
    public const double Clearance = 0.6;

    /// <summary>Between a label and a leader that is not its own.</summary>
    private const double FromLeader = 0.4;

    /// <summary>From what it belongs to up to the label's side.</summary>
    public Segment Leader { get; } = new(Anchor, new(
        Math.Clamp(Anchor.X, Box.Left, Box.Left + Box.Width), Math.Clamp(Anchor.Y, Box.Top, Box.Top + Box.Height)));

    /// <summary>Whether it touches another one, or a leader of one passes under the other.</summary>
    public bool Meets(PictureLabel other) =>
        Overlap(Box, other.Box, Clearance) || Passes(other.Leader, Box) || Passes(Leader, other.Box);

    /// <summary>Whether a piece passes through a box, or nearly.</summary>
    private static bool Passes(Segment piece, PageBox box)
    {
        var (left, top) = (box.Left - FromLeader, box.Top - FromLeader);
        var (right, bottom) = (box.Left + box.Width + FromLeader, box.Top + box.Height + FromLeader);
        var (enters, leaves) = (0.0, 1.0);
        return Clip(piece.From.X, piece.To.X - piece.From.X, left, right, ref enters, ref leaves)
            && Clip(piece.From.Y, piece.To.Y - piece.From.Y, top, bottom, ref enters, ref leaves);
    }

    private static bool Clip(double from, double way, double low, double high, ref double enters, ref double leaves)
    {
        if (way == 0)
        {
            return from >= low && from <= high;
        }

        var (one, other) = ((low - from) / way, (high - from) / way);
        enters = Math.Max(enters, Math.Min(one, other));
        leaves = Math.Min(leaves, Math.Max(one, other));
        return enters <= leaves;
    }

    private static bool Overlap(PageBox one, PageBox other, double clearance) =>
        one.Left < other.Left + other.Width + clearance && other.Left < one.Left + one.Width + clearance
        && one.Top < other.Top + other.Height + clearance && other.Top < one.Top + one.Height + clearance;
}
