using System;
using System.Collections.Generic;
using System.Collections.Immutable;
using System.Linq;
using CoverPattern.Geometry;
using CoverPattern.Patterns.Pieces;

namespace CoverPattern.Lays.Cutting;

/// <summary>Plans the way of the tool over a lay: little travel in the air, and no piece cut out before all that belongs to it is done.</summary>
public static class CutPlanner
{
    /// <summary>Plans a lay.</summary>
    /// <param name="lay">A lay.</param>
    /// <param name="pieces">The pieces it places, with their patterns.</param>
    /// <param name="marks">What a pen draws on the pieces, each stroke with the label of its piece; may be empty.</param>
    public static CutPlan Plan(Lay lay, PieceSet pieces, ImmutableArray<Stroke> marks)
    {
        ArgumentNullException.ThrowIfNull(lay);
        ArgumentNullException.ThrowIfNull(pieces);

        var laid = Laid(lay, pieces, marks);
        var outlines = laid.Select(strokes => strokes[^1].Points).ToArray();
        ImmutableArray<Box2> boxes = [.. outlines.Select(outline => Rings.Bounds(outline))];
        var order = PieceTour.Order(boxes, [.. outlines.Select(outline => Math.Abs(Rings.SignedArea(outline)))]);
        var plan = ImmutableArray.CreateBuilder<Stroke>();
        var at = default(Point2);
        for (var i = 0; i < order.Length; i++)
        {
            var strokes = lay.SpacingMm == 0 ? WithoutCommon(laid[order[i]], order.Take(i).Where(j => Touch(boxes[order[i]], boxes[j])).Select(j => outlines[j])) : laid[order[i]];
            plan.AddRange(PieceRoute.Find(strokes, at, i + 1 < order.Length ? boxes[order[i + 1]] : null));
            at = plan.Count > 0 ? plan[^1].End : at;
        }

        return new CutPlan(plan.ToImmutable()) { SharedMm = laid.Sum(strokes => strokes[^1].Length) - plan.Where(stroke => stroke.Use == StrokeUse.Outline).Sum(stroke => stroke.Length) };
    }

    /// <summary>The same strokes in the order in which pieces stand in the lay and lines in their pattern: what a plan is measured against.</summary>
    public static CutPlan AsPlaced(Lay lay, PieceSet pieces, ImmutableArray<Stroke> marks)
    {
        ArgumentNullException.ThrowIfNull(lay);
        ArgumentNullException.ThrowIfNull(pieces);

        return new CutPlan([.. Laid(lay, pieces, marks).SelectMany(strokes => strokes.OrderBy(stroke => stroke.Use))]);
    }

    /// <summary>For each placement its strokes, the outline last.</summary>
    private static ImmutableArray<Stroke>[] Laid(Lay lay, PieceSet pieces, ImmutableArray<Stroke> marks)
    {
        var drawn = marks.ToLookup(stroke => stroke.Piece, StringComparer.Ordinal);
        var patterns = LaidShapes.ById(pieces);
        var byLabel = pieces.Pieces.ToDictionary(piece => piece.Label, piece => patterns[piece.Pattern], StringComparer.Ordinal);
        return [.. lay.Placements.Select(place => drawn[place.Piece].Concat(PieceStrokes.Of(byLabel[place.Piece], place)).ToImmutableArray())];
    }

    private static ImmutableArray<Stroke> WithoutCommon(ImmutableArray<Stroke> strokes, IEnumerable<ImmutableArray<Point2>> done) =>
        [.. strokes[..^1], .. CommonCuts.Left(strokes[^1], [.. done])];

    private static bool Touch(Box2 left, Box2 right) =>
        left.Low.X <= right.High.X + 1 && right.Low.X <= left.High.X + 1 && left.Low.Y <= right.High.Y + 1 && right.Low.Y <= left.High.Y + 1;
}
