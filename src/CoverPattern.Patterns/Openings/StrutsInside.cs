using System;
using System.Collections.Immutable;
using System.Linq;
using CoverPattern.Patterns.Shells;

namespace CoverPattern.Patterns.Openings;

/// <summary>Finds the struts that stand in a region: those that its rim crosses, and those it holds whole.</summary>
internal static class StrutsInside
{
    /// <summary>Their names, the lower hub's label first, sorted; base chords apart, over which every way in from outside steps.</summary>
    internal static (ImmutableArray<string> Struts, ImmutableArray<string> BaseChords) Of(ClippedShell surface, Region region)
    {
        var shell = surface.Shell;
        var crossed = region.Rim[0].IsRing ? [] : FaceCutter.Cut(surface, [region])!.Value.Where(cell => cell.Region == 0)
            .SelectMany(cell => cell.Edges).Where(edge => !edge.IsRim && edge.Line >= 0).Select(edge => edge.Line).Distinct()
            .Where(line => shell.Edges[line] is { Right: >= 0, IsFold: false }).ToArray();
        bool IsFacet(int face) => shell.Faces[face].Kind == FaceKind.Facet;
        return (
            Names(shell, [.. crossed.Where(line => IsFacet(shell.Edges[line].Left) && IsFacet(shell.Edges[line].Right))]),
            Names(shell, [.. crossed.Where(line => IsFacet(shell.Edges[line].Left) != IsFacet(shell.Edges[line].Right))]));
    }

    private static ImmutableArray<string> Names(Shell shell, int[] lines) => [.. lines.Select(line => NameOf(shell, line)).Order(StringComparer.Ordinal)];

    private static string NameOf(Shell shell, int line)
    {
        var (from, to) = (shell.Edges[line].From, shell.Edges[line].To);
        return $"{shell.Nodes[Math.Min(from, to)].Label}-{shell.Nodes[Math.Max(from, to)].Label}";
    }
}
