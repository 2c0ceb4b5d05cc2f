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
            var next = i + 1 < order.Length ? boxes[order[i + 1]] : (Box2?)null;
            at = Append(plan, laid[order[i]], at, next);
        }

        return new CutPlan(plan.ToImmutable());
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

    private static Point2 Append(ImmutableArray<Stroke>.Builder plan, ImmutableArray<Stroke> strokes, Point2 at, Box2? next)
    {
        foreach (var stage in strokes.GroupBy(stroke => stroke.Use).OrderBy(stage => stage.Key))
        {
            var left = stage.ToList();
            while (left.Count > 0)
            {
                var (stroke, corner) = Nearest(left, at, stage.Key == StrokeUse.Outline ? next : null);
                plan.Add(stroke.From(corner));
                left.Remove(stroke);
                at = plan[^1].End;
            }
        }

        return at;
    }

    private static (Stroke Stroke, int Corner) Nearest(List<Stroke> strokes, Point2 at, Box2? next) => strokes
        .SelectMany(stroke => Corners(stroke).Select(corner => (stroke, corner)))
        .MinBy(choice => Point2.Distance(at, choice.stroke.Points[choice.corner]) + (next is { } box ? Distance(box, choice.stroke.Points[choice.corner]) : 0));

    /// <summary>A closed stroke may begin at any corner, an open one at either end.</summary>
    private static IEnumerable<int> Corners(Stroke stroke) =>
        stroke.IsClosed ? Enumerable.Range(0, stroke.Points.Length - 1) : [0, stroke.Points.Length - 1];

    private static double Distance(Box2 box, Point2 point) =>
        Point2.Distance(point, new Point2(Math.Clamp(point.X, box.Low.X, box.High.X), Math.Clamp(point.Y, box.Low.Y, box.High.Y)));
}
