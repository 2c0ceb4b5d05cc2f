using System.Collections.Immutable;
using CoverPattern.Geometry;
using CoverPattern.Patterns.Pieces;

namespace CoverPattern.Lays.Models;

/// <summary>One piece of a paper model, seen from outside; everything in millimetres of paper.</summary>
/// <param name="Label">Label of the piece of cloth.</param>
/// <param name="Outline">Its sew line at the model's scale, in the order of the pattern's corners.</param>
/// <param name="Edges">Its edges in the order of the pattern's runs, those of holes not among them.</param>
/// <param name="Folds">Where it is folded over a strut.</param>
/// <param name="Openings">Rims of its holes.</param>
/// <param name="Tabs">Its tabs.</param>
/// <param name="LabelSpot">Centre of the free circle in which the label is written.</param>
/// <param name="LabelRadius">Radius of that circle.</param>
public sealed record ModelPiece(
    string Label,
    ImmutableArray<Point2> Outline,
    ImmutableArray<ModelEdge> Edges,
    ImmutableArray<FoldLine> Folds,
    ImmutableArray<ImmutableArray<Point2>> Openings,
    ImmutableArray<ModelTab> Tabs,
    Point2 LabelSpot,
    double LabelRadius);
