using System.Collections.Generic;

namespace CoverPattern.Patterns.Seams;

/// <summary>Which hubs slits join; all hubs of the border are one.</summary>
/// <param name="struts">The frame's struts.</param>
/// <param name="inner">The hubs that are not of the border.</param>
internal sealed class JoinedHubs(StrutTable struts, HashSet<int> inner)
{
    private const int Border = -1;

    private readonly Dictionary<int, int> leader = [];

    /// <summary>Whether an edge lies between hubs that are not joined.</summary>
    internal bool AreApart(int edge) => Root(struts.Shell.Edges[edge].From) != Root(struts.Shell.Edges[edge].To);

    /// <summary>Joins the ends of an edge; false when they are already.</summary>
    internal bool Join(int edge)
    {
        var (from, to) = (Root(struts.Shell.Edges[edge].From), Root(struts.Shell.Edges[edge].To));
        return from != to && leader.TryAdd(from, to);
    }

    private int Root(int hub)
    {
        var root = inner.Contains(hub) ? hub : Border;
        while (leader.TryGetValue(root, out var next))
        {
            root = next;
        }

        return root;
    }
}
