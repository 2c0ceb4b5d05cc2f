using System.Collections.Immutable;
using System.Linq;
using CoverPattern.Geometry;

namespace CoverPattern.Patterns.Pieces;

/// <summary>The shape of one or more equal pieces, seen from outside, grain along +x; everything in millimetres on the grid.</summary>
/// <param name="Id">Short name, such as "T03".</param>
/// <param name="Cloth">Name of the cloth it is cut from.</param>
/// <param name="Kind">What the piece is.</param>
/// <param name="Quantity">Pieces of this shape over all covers.</param>
/// <param name="SewLine">Ring, counter-clockwise seen from outside, first point not repeated.</param>
/// <param name="CutLine">Ring round the sew line with all allowances, counter-clockwise.</param>
/// <param name="Runs">Edges of the sew line in order, without gap.</param>
/// <param name="Folds">Lines where the cloth goes over a strut uncut.</param>
/// <param name="Notches">Marks at which partner edges meet.</param>
/// <param name="Drills">Marks inside the piece; drawn, but for those that say that they are pierced.</param>
/// <param name="Lines">Further lines drawn on the cloth, such as clip lines; never cut.</param>
/// <param name="Cutouts">Holes; the run of the first counts as the one after the last of <paramref name="Runs"/>, and so on.</param>
/// <param name="Grain">Line along the warp, drawn in the middle of the piece.</param>
/// <param name="Facets">Rings of the plane faces that make up the piece; the first is the main one.</param>
/// <param name="LabelSpot">Centre of the free circle in which the label is written.</param>
/// <param name="LabelRadius">Radius of that circle, millimetres.</param>
public sealed record Pattern(
    string Id,
    string Cloth,
    PieceKind Kind,
    int Quantity,
    ImmutableArray<Point2> SewLine,
    ImmutableArray<Point2> CutLine,
    ImmutableArray<EdgeRun> Runs,
    ImmutableArray<FoldLine> Folds,
    ImmutableArray<Notch> Notches,
    ImmutableArray<DrillMark> Drills,
    ImmutableArray<MarkLine> Lines,
    ImmutableArray<Cutout> Cutouts,
    GrainLine Grain,
    ImmutableArray<ImmutableArray<Point2>> Facets,
    Point2 LabelSpot,
    double LabelRadius)
{
    /// <summary>The edges of the outline, then those of the holes: the order in which notches and pieces count them.</summary>
    public ImmutableArray<EdgeRun> AllRuns => [.. Runs, .. Cutouts.Select(cutout => cutout.Run)];
}
