using BendSheet.Core.Picture;

namespace BendSheet.Sheets.Picture;

/// <summary>A part, or a place that only words name, with what leads on from it.</summary>
/// <param name="Name">As typed.</param>
/// <param name="Part">Null where the words lead to no part.</param>
internal sealed record PlumbingNode(string Name, PicturedPart? Part)
{
    /// <summary>What leads on, in the order of the file.</summary>
    public List<PlumbingBranch> Branches { get; } = [];
}

/// <summary>A line or hose with what it leads to.</summary>
/// <param name="Run">The line or hose, or nothing between two parts.</param>
/// <param name="To">What it leads to.</param>
/// <param name="IsAgain">That is in the tree already, in another place.</param>
internal sealed record PlumbingBranch(PicturedRun Run, PlumbingNode To, bool IsAgain);

/// <summary>
/// The network as trees, from the master cylinders outwards, each part as near to them as it can be. What would close a ring leads to a
/// part that is named once more, so that no two lines of the diagram ever cross.
/// </summary>
internal static class PlumbingTree
{
    /// <summary>The roots: master cylinders first, then whatever hangs on none, in the order of the file.</summary>
    public static IReadOnlyList<PlumbingNode> Of(CarPicture picture)
    {
        var nodes = new Dictionary<string, PlumbingNode>(StringComparer.Ordinal);
        var uses = new Dictionary<PlumbingNode, List<(PicturedRun Run, PlumbingNode Other)>>(ReferenceEqualityComparer.Instance);
        var order = new List<PlumbingNode>();
        foreach (var part in picture.Parts.OrderByDescending(part => part.IsSource))
        {
            Node("part:" + part.Name, part.Name, part);
        }

        foreach (var run in picture.Runs)
        {
            var (a, b) = (End(run, run.A, 0), End(run, run.B, 1));
            uses[a].Add((run, b));
            uses[b].Add((run, a));
        }

        return Grown(order, uses);

        PlumbingNode End(PicturedRun run, PicturedEnd end, int index) => end.Part is { } part
            ? nodes["part:" + part]
            : Node(end.IsNamed ? "words:" + end.InWords : $"end:{index}:{run.Kind}:{run.Name}", end.InWords, null);

        PlumbingNode Node(string key, string name, PicturedPart? part)
        {
            if (!nodes.TryGetValue(key, out var node))
            {
                node = new(name, part);
                nodes.Add(key, node);
                uses.Add(node, []);
                order.Add(node);
            }

            return node;
        }
    }

    /// <summary>Layer by layer from each root.</summary>
    private static List<PlumbingNode> Grown(
        List<PlumbingNode> order, Dictionary<PlumbingNode, List<(PicturedRun Run, PlumbingNode Other)>> uses)
    {
        var roots = new List<PlumbingNode>();
        var reached = new HashSet<PlumbingNode>(ReferenceEqualityComparer.Instance);
        var drawn = new HashSet<PicturedRun>(ReferenceEqualityComparer.Instance);
        var open = new Queue<PlumbingNode>();
        var sources = order.TakeWhile(node => node.Part is { IsSource: true }).ToList();
        foreach (var node in sources)
        {
            Begin(node);
        }

        Grow();
        foreach (var node in order.Where(node => !reached.Contains(node)))
        {
            Begin(node);
            Grow();
        }

        return roots;

        void Begin(PlumbingNode node)
        {
            roots.Add(node);
            reached.Add(node);
            open.Enqueue(node);
        }

        void Grow()
        {
            while (open.TryDequeue(out var node))
            {
                foreach (var (run, other) in uses[node])
                {
                    if (!drawn.Add(run))
                    {
                        continue;
                    }

                    var isNew = reached.Add(other);
                    node.Branches.Add(new(run, other, !isNew));
                    if (isNew)
                    {
                        open.Enqueue(other);
                    }
                }
            }
        }
    }
}
