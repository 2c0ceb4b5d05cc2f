using System;
using System.Collections.Generic;
using System.Collections.Immutable;
using System.Globalization;
using System.Linq;
using CoverPattern.Geometry;
using CoverPattern.Patterns.Openings;
using CoverPattern.Patterns.Shells;

namespace CoverPattern.Patterns.Seams;

/// <summary>Cuts a shell along its hem and round its openings, face by face in chart coordinates.</summary>
/// <remarks>
/// Height above the hem is linear on a plane face, so each edge is crossed at most once; the crossing is computed once an
/// edge, as a fraction of it, and both faces use that record.
/// </remarks>
public static class Subdivider
{
    // What is left of a face narrower than this is dropped, millimetres; its neighbours' edges become the hem.
    private const double LeastPatch = 1;

    /// <summary>Cuts the shell.</summary>
    /// <param name="shell">The finished surface, not yet clipped.</param>
    /// <param name="plan">What becomes of its edges.</param>
    /// <param name="regions">What is taken out of it, each wholly inside one face and above the hem; none by default.</param>
    /// <exception cref="ArgumentException">A region lies where nothing is left of its face.</exception>
    public static Subdivision Cut(Shell shell, SeamPlan plan, ImmutableArray<Region> regions = default)
    {
        ArgumentNullException.ThrowIfNull(shell);
        ArgumentNullException.ThrowIfNull(plan);

        var outlines = shell.Faces
            .Select((_, face) => FaceClip.Clip(shell, face))
            .Where(clip => clip.Corners.Length >= 3 && Width(clip) >= LeastPatch)
            .ToImmutableArray();
        var arcs = ArcsOf(shell, plan, outlines, out var arcsOfPatches);
        var whole = outlines.Select((clip, i) => new Patch(clip.Face, clip.Corners, arcsOfPatches[i])).ToImmutableArray();
        var (patches, rims) = RegionCutter.Cut(whole, regions.IsDefault ? [] : regions, arcs.Length);
        return new Subdivision(patches, [.. arcs, .. rims]) { Panels = plan.Panels };
    }

    private static double Width(FaceClip clip)
    {
        var longest = clip.Corners.Select((corner, i) => Point2.Distance(corner, clip.Corners[(i + 1) % clip.Corners.Length])).Max();
        return 2 * Rings.SignedArea(clip.Corners) / longest;
    }

    /// <summary>One arc an edge of the shell that is left, and one a cut along the hem.</summary>
    private static ImmutableArray<Arc> ArcsOf(
        Shell shell, SeamPlan plan, ImmutableArray<FaceClip> outlines, out ImmutableArray<ImmutableArray<int>> arcsOfPatches)
    {
        var sides = new List<(int ShellEdge, List<PatchSide> Sides)>();
        var arcByEdge = new Dictionary<int, int>();
        var perPatch = ImmutableArray.CreateBuilder<ImmutableArray<int>>();
        foreach (var (clip, patch) in outlines.Select((clip, patch) => (clip, patch)))
        {
            perPatch.Add([.. clip.ShellEdges.Select((shellEdge, edge) => Enter(shellEdge, new PatchSide(patch, edge)))]);
        }

        arcsOfPatches = perPatch.ToImmutable();
        var counts = new Dictionary<EdgeRole, int>();
        return [.. sides.Select(entry => MakeArc(shell, plan, outlines, entry, counts))];

        int Enter(int shellEdge, PatchSide side)
        {
            if (shellEdge < 0 || !arcByEdge.TryGetValue(shellEdge, out var arc))
            {
                arc = sides.Count;
                sides.Add((shellEdge, []));
                if (shellEdge >= 0)
                {
                    arcByEdge.Add(shellEdge, arc);
                }
            }

            sides[arc].Sides.Add(side);
            return arc;
        }
    }

    private static Arc MakeArc(
        Shell shell, SeamPlan plan, ImmutableArray<FaceClip> outlines, (int ShellEdge, List<PatchSide> Sides) entry, Dictionary<EdgeRole, int> counts)
    {
        var wish = entry.ShellEdge < 0 ? default : plan.Edges[entry.ShellEdge];
        var role = entry.Sides.Count == 1 ? EdgeRole.Hem : wish.Role;
        var number = counts[role] = counts.GetValueOrDefault(role) + 1;
        var first = entry.Sides[0];
        var second = entry.Sides.Count == 1 ? (PatchSide?)null : entry.Sides[1];
        if (role == EdgeRole.Seam && outlines[first.Patch].Face != wish.Over)
        {
            (first, second) = (second!.Value, first);
        }

        return new Arc(Letter(role) + number.ToString("D3", CultureInfo.InvariantCulture), role, role == EdgeRole.Seam ? wish.MakeUp : null, Length(shell, outlines, entry), first, second);
    }

    private static double Length(Shell shell, ImmutableArray<FaceClip> outlines, (int ShellEdge, List<PatchSide> Sides) entry)
    {
        var side = entry.Sides[0];
        var corners = outlines[side.Patch].Corners;
        return entry.ShellEdge >= 0
            ? shell.Edges[entry.ShellEdge].LengthMm * FaceClip.KeptShare(shell, entry.ShellEdge)
            : Point2.Distance(corners[side.Edge], corners[(side.Edge + 1) % corners.Length]);
    }

    /// <summary>S for seam, L for the line of a fold, E for the finished edge.</summary>
    private static string Letter(EdgeRole role) => role switch
    {
        EdgeRole.Seam => "S",
        EdgeRole.Fold => "L",
        EdgeRole.Hem => "E",
        _ => throw new ArgumentOutOfRangeException(nameof(role), role, "No letter for this role."),
    };
}
