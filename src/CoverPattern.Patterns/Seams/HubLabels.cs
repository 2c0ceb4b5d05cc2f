using System;
using System.Collections.Generic;
using CoverPattern.Patterns.Shells;

namespace CoverPattern.Patterns.Seams;

/// <summary>Finds hubs, their rings and the struts between them in a shell.</summary>
internal static class HubLabels
{
    /// <summary>Ring of the hub that a node lies over, 0 at the base; null for a foot of the skirt.</summary>
    internal static int? RingOf(ShellNode node) => node.Ring;

    /// <summary>Rings of all hubs by their labels.</summary>
    internal static Dictionary<string, int> Rings(Shell shell)
    {
        var rings = new Dictionary<string, int>(StringComparer.Ordinal);
        foreach (var node in shell.Nodes)
        {
            if (node.Ring is { } ring)
            {
                rings.TryAdd(node.Label, ring);
            }
        }

        return rings;
    }

    /// <summary>The shell's edges by strut, such as "H0.02-H1.01", each under both orders of its ends.</summary>
    internal static Dictionary<string, int> EdgesByStrut(Shell shell)
    {
        var edges = new Dictionary<string, int>(StringComparer.Ordinal);
        for (var i = 0; i < shell.Edges.Length; i++)
        {
            var (from, to) = (shell.Nodes[shell.Edges[i].From].Label, shell.Nodes[shell.Edges[i].To].Label);
            edges.TryAdd($"{from}-{to}", i);
            edges.TryAdd($"{to}-{from}", i);
        }

        return edges;
    }

    /// <summary>The name of the strut below an edge, lower label first.</summary>
    internal static string StrutOf(Shell shell, int edge)
    {
        var (from, to) = (shell.Nodes[shell.Edges[edge].From].Label, shell.Nodes[shell.Edges[edge].To].Label);
        return string.CompareOrdinal(from, to) <= 0 ? $"{from}-{to}" : $"{to}-{from}";
    }
}
