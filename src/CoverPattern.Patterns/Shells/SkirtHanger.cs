using System;
using System.Collections.Generic;
using System.Collections.Immutable;
using System.Linq;
using CoverPattern.Geometry;
using CoverPattern.Patterns.Frames;
using CoverPattern.Patterns.Jobs;

namespace CoverPattern.Patterns.Shells;

/// <summary>Hangs one skirt face from each base chord of a cover that stands above the finished edge.</summary>
internal sealed class SkirtHanger
{
    // A skirt lower than this is none.
    private const double LeastSkirt = 2;

    private readonly ShellMesh mesh;
    private readonly Frame frame;
    private readonly HemHeights heights;
    private readonly SkirtShape shape;
    private readonly Dictionary<int, Point3> downward;

    internal SkirtHanger(ShellMesh mesh, Frame frame, HemHeights heights, SkirtShape shape)
    {
        (this.mesh, this.frame, this.heights, this.shape) = (mesh, frame, heights, shape);
        var chords = mesh.BorderChords();
        var facetAfter = chords.ToDictionary(chord => chord.From, chord => mesh.Normal(chord.Face));
        downward = chords.ToDictionary(chord => chord.To, chord => CornerLine.Down(mesh.Normal(chord.Face), facetAfter[chord.To]));
    }

    internal void Hang()
    {
        // Borders of openings above the base have no skirt.
        var hung = new Dictionary<int, int>();
        foreach (var chord in mesh.BorderChords().Where(chord => chord.From < frame.Base.Length).OrderBy(chord => chord.From))
        {
            if (Math.Max(mesh.Height(chord.From), mesh.Height(chord.To)) >= LeastSkirt)
            {
                var ring = Ring(chord);
                var number = hung[chord.Face] = hung.GetValueOrDefault(chord.Face) + 1;
                mesh.AddFace(Shell.SkirtLabel(frame.Facets[chord.Face].Label, number), FaceKind.Skirt, ring, Strip(chord, ring));
            }
        }
    }

    /// <summary>The direction in which the side of the skirt runs down from a base hub, length 1.</summary>
    internal Point3 Down(int hub) => shape == SkirtShape.Slope ? downward[hub] : new Point3(0, 0, -1);

    /// <summary>Where the side of the skirt meets the finished edge below a base hub.</summary>
    internal Point3 FootOf(int hub) => shape == SkirtShape.Slope
        ? mesh.Position(hub) + (mesh.Height(hub) / heights.Descent(downward[hub]) * downward[hub])
        : mesh.Position(hub) with { Z = heights.EdgeZ[hub] };

    /// <summary>The skirt's corners below a chord, lower edge first; an end on or below the finished edge has no foot.</summary>
    private ImmutableArray<int> Ring(BorderChord chord)
    {
        int Lower(int end) => mesh.Height(end) > 0 ? mesh.Foot(end, FootOf(end)) : end;
        return [.. new[] { Lower(chord.From), Lower(chord.To), chord.To, chord.From }.Distinct()];
    }

    /// <summary>
    /// The corners of a skirt over measured heights, as a flat strip of its own: the chord keeps its length and ends at the
    /// measured heights. Empty where the model's places hold: over model heights, and on the facets' own planes.
    /// </summary>
    private ImmutableArray<Point2> Strip(BorderChord chord, ImmutableArray<int> ring)
    {
        if (shape == SkirtShape.Slope || heights.Raised.All(raised => raised == 0))
        {
            return [];
        }

        double Top(int hub) => mesh.Position(hub).Z + heights.Raised[hub];
        var plan = PlanLength(Point3.Distance(mesh.Position(chord.From), mesh.Position(chord.To)), Top(chord.To) - Top(chord.From));
        Point2 Corner(int node)
        {
            var hub = mesh.HubOver(node);
            return new Point2(hub == chord.From ? 0 : plan, Top(hub) - (hub == node ? 0 : mesh.Height(hub)));
        }

        return [.. ring.Select(Corner)];
    }

    /// <summary>Length on plan of a chord whose ends differ in height; NaN when they differ by more than its length.</summary>
    internal static double PlanLength(double length, double rise) => Math.Sqrt((length * length) - (rise * rise));
}
