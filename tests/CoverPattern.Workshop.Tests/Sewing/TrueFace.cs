using System.Collections.Generic;
using System.Linq;

namespace CoverPattern.Workshop.Tests.Sewing;

/// <summary>A plane face of the true cover, clipped at the hem.</summary>
/// <param name="Label">"F1.07" or "F1.07k".</param>
/// <param name="Corners">Counter-clockwise seen from outside, millimetres.</param>
/// <param name="Edges">What each edge, from each corner to the next, has to be.</param>
/// <param name="Outward">Unit normal.</param>
/// <param name="Round">Unit step along the facet's ring edge, counter-clockwise seen from above; on a skirt along its chord.</param>
/// <param name="Centre">Mean of the corners before clipping; says which face is the higher one.</param>
internal sealed record TrueFace(
    string Label, IReadOnlyList<SpacePoint> Corners, IReadOnlyList<TrueEdge> Edges, SpacePoint Outward, SpacePoint Round, SpacePoint Centre)
{
    /// <summary>Corners before clipping: places on a facet are told from the middle of the whole.</summary>
    internal IReadOnlyList<SpacePoint> Uncut { get; init; } = [];

    internal bool IsSkirt => Label.EndsWith('k');

    /// <summary>How far the corners of a face of more than three lie off one plane, millimetres: as far off may cloth lie that was cut plane.</summary>
    internal double Bend
    {
        get
        {
            var middle = (1.0 / Corners.Count) * Corners.Aggregate((sum, corner) => sum + corner);
            return Corners.Max(corner => System.Math.Abs((corner - middle).Dot(Outward)));
        }
    }

    /// <summary>Square millimetres.</summary>
    internal double Area => Enumerable.Range(1, Corners.Count - 2)
        .Aggregate(default(SpacePoint), (sum, i) => sum + (Corners[i] - Corners[0]).Cross(Corners[i + 1] - Corners[0])).Length / 2;
}

/// <summary>What an edge of a true face has to be.</summary>
/// <param name="Role">"seam", "fold" or "hem", the words of the file.</param>
/// <param name="Neighbour">Label of the face beyond it; null at the hem.</param>
internal readonly record struct TrueEdge(string Role, string? Neighbour)
{
    /// <summary>Whether it begins over a hub of the frame.</summary>
    internal bool FromHub { get; init; }

    /// <summary>Whether it ends over one.</summary>
    internal bool ToHub { get; init; }
}
