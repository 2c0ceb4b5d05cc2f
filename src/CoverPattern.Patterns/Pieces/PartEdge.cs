using CoverPattern.Geometry;
using CoverPattern.Patterns.Seams;

namespace CoverPattern.Patterns.Pieces;

/// <summary>An edge of a part laid flat.</summary>
/// <param name="From">Where it begins.</param>
/// <param name="Arc">Index of its arc among those of what the opening takes out; -1 on the line between two leaves.</param>
/// <param name="Side">The patch's edge.</param>
internal readonly record struct PartEdge(Point2 From, int Arc, PatchSide Side)
{
    /// <summary>The leaf it belongs to.</summary>
    internal Leaf Leaf { get; init; }
}
