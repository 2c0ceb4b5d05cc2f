using System;
using System.Collections.Immutable;
using System.Linq;
using CoverPattern.Patterns.Frames;
using CoverPattern.Patterns.Jobs;

namespace CoverPattern.Patterns.Shells;

/// <summary>Fits the outer shell over a frame: stand-off, skirt, ease.</summary>
public static class ShellFitter
{
    // A border or strip lower than this is neither cut nor sewn: a millimetre is the width of a chalk line.
    private const double LeastStrip = 1;

    // A skirt lower than this is none.
    private const double LeastSkirt = 2;

    /// <summary>Makes the finished surface of the cover.</summary>
    /// <param name="job">Stand-off, drop and ease are read.</param>
    /// <param name="frame">The frame to be covered.</param>
    /// <returns>
    /// The shell, its lower parts not yet clipped. One skirt face hangs from each base chord straight down to z = -drop;
    /// hubs within 1 mm of the finished edge count as on it, and a chord whose both ends are less than 2 mm above it has no skirt.
    /// All of it, drop included, is scaled by (1 + ease) about the deck's centre.
    /// </returns>
    public static Shell Fit(Job job, Frame frame)
    {
        ArgumentNullException.ThrowIfNull(job);
        ArgumentNullException.ThrowIfNull(frame);

        var drop = job.Skirt.Drop.Millimetres;
        var mesh = new ShellMesh(1 + job.Ease);
        foreach (var (hub, position) in frame.Hubs.Zip(StandOff.Move(frame, job.StandOff.Millimetres)))
        {
            var height = position.Z + drop;
            mesh.AddNode(hub.Label, position, Math.Abs(height) < LeastStrip ? 0 : height);
        }

        foreach (var facet in frame.Facets)
        {
            mesh.AddFace(facet.Label, FaceKind.Facet, facet.Hubs);
        }

        HangSkirt(mesh, frame, drop);
        return mesh.Finish(job.StandOff.Millimetres, job.Ease);
    }

    private static void HangSkirt(ShellMesh mesh, Frame frame, double drop)
    {
        foreach (var chord in mesh.BorderChords().OrderBy(chord => chord.From))
        {
            var (from, to) = (mesh.Height(chord.From), mesh.Height(chord.To));
            if (Math.Max(from, to) >= LeastSkirt)
            {
                mesh.AddFace(frame.Facets[chord.Face].Label + "k", FaceKind.Skirt, SkirtRing(mesh, chord, drop));
            }
        }
    }

    /// <summary>The skirt's corners below a chord, lower edge first; an end on or below the finished edge has no foot.</summary>
    private static ImmutableArray<int> SkirtRing(ShellMesh mesh, BorderChord chord, double drop)
    {
        int Lower(int end) => mesh.Height(end) > 0 ? mesh.FootBelow(end, -drop) : end;
        return [.. new[] { Lower(chord.From), Lower(chord.To), chord.To, chord.From }.Distinct()];
    }
}
