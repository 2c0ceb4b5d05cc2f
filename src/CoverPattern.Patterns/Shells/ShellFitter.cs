using System;
using System.Collections.Immutable;
using System.Linq;
using CoverPattern.Geometry;
using CoverPattern.Patterns.Frames;
using CoverPattern.Patterns.Jobs;

namespace CoverPattern.Patterns.Shells;

/// <summary>Fits the outer shell over a frame: stand-off, skirt, ease.</summary>
public static class ShellFitter
{
    /// <summary>Makes the finished surface of the cover.</summary>
    /// <param name="job">Stand-off, skirt, deck and ease are read; what <see cref="DeckCheck"/> refuses must not come here.</param>
    /// <param name="frame">The frame to be covered.</param>
    /// <returns>
    /// The shell, its lower parts not yet clipped. One skirt face hangs from each base chord to the finished edge, as the skirt's
    /// shape says; hubs within 1 mm of the finished edge count as on it - over heights of the model the whole edge runs through the lowest of them -, and a chord whose both ends are less than 2 mm above it has no skirt.
    /// All of it, drop included, is scaled by (1 + ease) about the deck's centre.
    /// </returns>
    public static Shell Fit(Job job, Frame frame)
    {
        ArgumentNullException.ThrowIfNull(job);
        ArgumentNullException.ThrowIfNull(frame);

        var moved = StandOff.Move(frame, job.StandOff.Millimetres);
        var heights = HemHeights.Of(job, frame, moved);
        var mesh = Mesh(job, frame, moved, heights);
        new SkirtHanger(mesh, frame, heights, job.Skirt.Shape).Hang();
        return mesh.Finish(job.StandOff.Millimetres, job.Ease);
    }

    /// <summary>The facets alone.</summary>
    internal static ShellMesh Mesh(Job job, Frame frame, ImmutableArray<Point3> moved, HemHeights heights)
    {
        var mesh = new ShellMesh(1 + job.Ease) { Folds = [.. frame.Folds] };
        foreach (var (hub, i) in frame.Hubs.Select((hub, i) => (hub, i)))
        {
            var height = heights.AboveEdge[i];
            mesh.AddNode(hub.Label, moved[i], HemHeights.IsOnEdge(height) ? 0 : height, hub.Ring);
        }

        foreach (var facet in frame.Facets)
        {
            mesh.AddFace(facet.Label, FaceKind.Facet, facet.Hubs, []);
        }

        return mesh;
    }
}
