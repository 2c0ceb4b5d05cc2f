using System;
using System.Collections.Generic;
using System.Collections.Immutable;
using System.Linq;
using CoverPattern.Patterns.Jobs;
using CoverPattern.Patterns.Shells;

namespace CoverPattern.Patterns.Seams;

/// <summary>Tells what was too small to be cut and sewn.</summary>
public static class SubdivisionCheck
{
    /// <summary>Yields a notice for slivers that were dropped and for chords without a skirt though they stand above the edge.</summary>
    /// <param name="shell">The shell before it was cut.</param>
    /// <param name="cut">What is left of it.</param>
    public static ImmutableArray<Notice> Check(Shell shell, Subdivision cut)
    {
        ArgumentNullException.ThrowIfNull(shell);
        ArgumentNullException.ThrowIfNull(cut);

        return [.. Slivers(shell, cut), .. BareChords(shell, cut)];
    }

    private static IEnumerable<Notice> Slivers(Shell shell, Subdivision cut)
    {
        var kept = cut.Insides.Prepend(cut).SelectMany(part => part.Patches).Select(patch => patch.Face).ToImmutableHashSet();
        var dropped = shell.Faces.Where((face, i) => !kept.Contains(i) && face.Nodes.Any(node => shell.Nodes[node].AboveHem > 0)).ToArray();
        if (dropped.Length > 0)
        {
            yield return new Notice(
                NoticeLevel.Note,
                "slivers-dropped",
                dropped[0].Label,
                FormattableString.Invariant($"{dropped.Length} faces rise above the finished edge by less than 1 mm of width; they are left off, and their neighbours end there."));
        }
    }

    private static IEnumerable<Notice> BareChords(Shell shell, Subdivision cut)
    {
        // Edges of a crown ring or a window have no skirt either, and need none.
        bool IsBase(ShellEdge edge) => edge.Right < 0 && shell.Nodes[edge.From].Ring == 0 && shell.Nodes[edge.To].Ring == 0;
        var kept = cut.Patches.Select(patch => patch.Face).ToImmutableHashSet();
        var bare = shell.Edges
            .Where(edge => IsBase(edge) && Math.Max(shell.Nodes[edge.From].AboveHem, shell.Nodes[edge.To].AboveHem) > 0)
            .Where(edge => kept.Contains(edge.Left) && shell.Faces[edge.Left].Kind == FaceKind.Facet)
            .Select(edge => shell.Faces[edge.Left])
            .ToArray();
        if (bare.Length > 0)
        {
            yield return new Notice(
                NoticeLevel.Note,
                "no-skirt",
                bare[0].Label,
                FormattableString.Invariant($"{bare.Length} base chords stand less than 2 mm above the finished edge: they have no skirt, the facet ends there."));
        }
    }
}
