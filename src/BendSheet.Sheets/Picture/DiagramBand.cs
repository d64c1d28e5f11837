namespace BendSheet.Sheets.Picture;

/// <summary>A box of the diagram.</summary>
/// <param name="Node">What it stands for.</param>
/// <param name="Column">Layers from the left.</param>
/// <param name="Row">Rows from the top, halves among them.</param>
/// <param name="IsAgain">It stands elsewhere with what leads on from it.</param>
internal sealed record DiagramBox(PlumbingNode Node, int Column, double Row, bool IsAgain);

/// <summary>A line or hose between two boxes.</summary>
/// <param name="Branch">Which.</param>
/// <param name="From">Nearer to the master cylinder.</param>
/// <param name="To">In the next column; no other one has its row there.</param>
internal sealed record DiagramLink(PlumbingBranch Branch, DiagramBox From, DiagramBox To);

/// <summary>
/// As much of a tree as fits the columns and rows of a band; each end of it has a row of its own. What is deeper or longer goes on in a
/// band of its own, which begins with the box at which the one before stopped.
/// </summary>
/// <param name="Boxes">From the left and the top.</param>
/// <param name="Links">Between them.</param>
/// <param name="Rows">How many.</param>
internal sealed record DiagramBand(IReadOnlyList<DiagramBox> Boxes, IReadOnlyList<DiagramLink> Links, int Rows)
{
    /// <summary>The bands of all trees.</summary>
    /// <param name="roots">Of the trees.</param>
    /// <param name="columns">Of a band at most, two or more.</param>
    /// <param name="rows">Of a band at most, one or more.</param>
    public static IReadOnlyList<DiagramBand> Of(IEnumerable<PlumbingNode> roots, int columns, int rows)
    {
        var bands = new List<DiagramBand>();
        var open = new LinkedList<(PlumbingNode Root, int From)>(roots.Select(root => (root, 0)));
        while (open.First is { } first)
        {
            open.RemoveFirst();
            var builder = new Builder(columns, rows);
            builder.Place(first.Value.Root, first.Value.From, 0);
            bands.Add(new(builder.Boxes, builder.Links, builder.Row));

            // What goes on stands as near as can be below what it goes on from.
            foreach (var next in Enumerable.Reverse(builder.GoesOn))
            {
                open.AddFirst(next);
            }
        }

        return bands;
    }

    private sealed class Builder(int columns, int rows)
    {
        public List<DiagramBox> Boxes { get; } = [];

        public List<DiagramLink> Links { get; } = [];

        public List<(PlumbingNode Root, int From)> GoesOn { get; } = [];

        public int Row { get; private set; }

        /// <summary>No deeper than there are columns.</summary>
        public DiagramBox Place(PlumbingNode node, int from, int column, bool isAgain = false)
        {
            var branches = isAgain ? [] : node.Branches.Skip(from).ToList();
            if (branches.Count == 0 || column == columns - 1)
            {
                if (branches.Count > 0)
                {
                    GoesOn.Add((node, from));
                }

                return Add(node, column, Row++, isAgain || branches.Count > 0);
            }

            var children = new List<(PlumbingBranch Branch, DiagramBox Box)>();
            for (var i = 0; i < branches.Count; i++)
            {
                // The first branch always stands with its part: otherwise the diagram would never end.
                if (i > 0 && Row >= rows)
                {
                    GoesOn.Add((node, from + i));
                    break;
                }

                children.Add((branches[i], Place(branches[i].To, 0, column + 1, branches[i].IsAgain)));
            }

            var box = Add(node, column, (children[0].Box.Row + children[^1].Box.Row) / 2, isAgain: false);
            Links.AddRange(children.Select(child => new DiagramLink(child.Branch, box, child.Box)));
            return box;
        }

        private DiagramBox Add(PlumbingNode node, int column, double row, bool isAgain)
        {
            var box = new DiagramBox(node, column, row, isAgain);
            Boxes.Add(box);
            return box;
        }
    }
}
