using System.Collections.Immutable;
using CoverPattern.Geometry;
using CoverPattern.Patterns.Seams;

namespace CoverPattern.Patterns.Pieces;

/// <summary>A panel turned to its grain, before it is known which pieces are equal.</summary>
/// <param name="Label">Label of the piece on the first cover.</param>
/// <param name="Kind">What the piece is.</param>
/// <param name="Corners">Corners of the sew line, grain along +x, up the cover along +y, unsnapped millimetres.</param>
/// <param name="Runs">Edge from each corner to the next.</param>
/// <param name="Faces">Rings of its faces in the same coordinates, main one first.</param>
/// <param name="FaceLabels">Their labels.</param>
/// <param name="Folds">Fold lines in the same coordinates.</param>
internal sealed record PieceDraft(
    string Label,
    PieceKind Kind,
    ImmutableArray<Point2> Corners,
    ImmutableArray<DraftRun> Runs,
    ImmutableArray<ImmutableArray<Point2>> Faces,
    ImmutableArray<string> FaceLabels,
    ImmutableArray<FoldLine> Folds);

/// <summary>An edge of a draft.</summary>
/// <param name="Arc">Index of its arc.</param>
/// <param name="Class">Class of the arc.</param>
/// <param name="Side">Which side of the seam it is.</param>
/// <param name="Allowance">Cloth beyond the sew line, millimetres.</param>
/// <param name="PatchSide">The patch's edge it is.</param>
internal sealed record DraftRun(int Arc, ArcClass Class, EdgeSide Side, double Allowance, PatchSide PatchSide);
