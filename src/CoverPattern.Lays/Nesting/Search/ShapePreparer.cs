using System;
using System.Collections.Generic;
using System.Collections.Immutable;
using System.Linq;
using CoverPattern.Geometry;

namespace CoverPattern.Lays.Nesting.Search;

/// <summary>Makes the prepared shapes of a task: one for every item, allowed turn and face.</summary>
internal static class ShapePreparer
{
    // Free turning is searched on these turns and on all that lay an edge along the strip.
    private const int FreeTurns = 24;

    /// <summary>Shapes of all items, grouped by item, those of one item in a fixed order.</summary>
    /// <returns>Turns that give the same outline as an earlier one (up to a shift) are left out.</returns>
    public static ImmutableArray<ImmutableArray<PreparedShape>> Prepare(NestingTask task)
    {
        var index = 0;
        var all = ImmutableArray.CreateBuilder<ImmutableArray<PreparedShape>>();
        for (var item = 0; item < task.Items.Length; item++)
        {
            var shapes = ImmutableArray.CreateBuilder<PreparedShape>();
            var poles = Poles(task, item);
            var seen = new List<ImmutableArray<Point2>>();
            foreach (var (turn, mirrored) in Poses(task.Items[item]))
            {
                var pose = new NestingPlacement(item, turn, default, mirrored);
                var ring = pose.Apply(task.Items[item].Outline);
                if (task.Items[item].Holes.IsEmpty && seen.Any(other => SameUpToShift(other, ring)))
                {
                    continue;
                }

                seen.Add(ring);
                shapes.Add(Build(task, pose, poles, index++));
            }

            all.Add(shapes.ToImmutable());
        }

        return all.ToImmutable();
    }

    /// <summary>The shape of one pose.</summary>
    /// <param name="task">The task.</param>
    /// <param name="pose">Item, turn and face; no shift.</param>
    /// <param name="index">Number the shape is to have.</param>
    public static PreparedShape Prepare(NestingTask task, NestingPlacement pose, int index) => Build(task, pose, Poles(task, pose.Item), index);

    /// <summary>The shape of one pose whose item's circles are known.</summary>
    public static PreparedShape Prepare(NestingTask task, NestingPlacement pose, List<PoleFinder.Pole> poles) => Build(task, pose, poles, PreparedShape.NoIndex);

    /// <summary>Circles inside an item, as drawn.</summary>
    public static List<PoleFinder.Pole> Poles(NestingTask task, int item)
    {
        var asDrawn = new NestingPlacement(item, 0, default);
        var rings = Grown(task, asDrawn).Select(ring => ring.Select(p => new[] { p.X, p.Y }).ToArray()).ToArray();
        return PoleFinder.Find(rings, PreparedShape.PoleCount);
    }

    /// <summary>The turns and faces to be searched, degrees in [0, 360), ascending, face up first.</summary>
    private static IEnumerable<(double Turn, bool Mirrored)> Poses(NestingItem item)
    {
        foreach (var mirrored in item.MayMirror ? new[] { false, true } : [false])
        {
            var turns = item.Turns.IsFree ? FreePoses(item, mirrored)
                : item.Turns.Within > 0 ? NearPoses(item, mirrored) : [.. item.Turns.Degrees];
            foreach (var turn in turns.Select(turn => ((turn % 360) + 360) % 360).Distinct().Order())
            {
                yield return (turn, mirrored);
            }
        }
    }

    /// <summary>Each allowed turn, four steps to its bounds, and all turns between that lay an edge along or across the strip.</summary>
    private static List<double> NearPoses(NestingItem item, bool mirrored)
    {
        var edges = FreePoses(item, mirrored).Skip(FreeTurns).SelectMany(turn => new[] { turn, turn + 90 });
        double[] steps = [0, -1, -0.5, 0.5, 1];
        return [.. item.Turns.Degrees.SelectMany(turn => steps.Select(step => turn + (step * item.Turns.Within))), .. edges.Where(turn => TurnChoices.IsWithin(item.Turns, turn))];
    }

    private static List<double> FreePoses(NestingItem item, bool mirrored)
    {
        var turns = Enumerable.Range(0, FreeTurns).Select(k => 360.0 * k / FreeTurns).ToList();
        for (var i = 0; i < item.Outline.Length; i++)
        {
            var edge = item.Outline[(i + 1) % item.Outline.Length] - item.Outline[i];
            var slope = Math.Atan2(mirrored ? -edge.Y : edge.Y, edge.X) * 180 / Math.PI;
            // Short edges of a rounded outline would give hundreds of turns that lay nothing straight.
            if (edge.Length > Rings.Perimeter(item.Outline) / 20)
            {
                turns.Add(Math.Round(-slope, 6));
                turns.Add(Math.Round(180 - slope, 6));
            }
        }

        return turns;
    }

    private static bool SameUpToShift(ImmutableArray<Point2> left, ImmutableArray<Point2> right)
    {
        var (first, count) = (left[0], left.Length);
        for (var start = 0; start < count; start++)
        {
            var shift = right[start] - first;
            if (Enumerable.Range(0, count).All(i => left[i] + shift == right[(start + i) % count]))
            {
                return true;
            }
        }

        return false;
    }

    private static IReadOnlyList<IReadOnlyList<Point2>> Grown(NestingTask task, NestingPlacement pose)
    {
        var item = task.Items[pose.Item];
        return SpacedOutline.Grow([pose.Apply(item.Outline), .. item.Holes.Select(hole => pose.Apply(hole))], item.IsFlaw ? 0 : task.Spacing / 2);
    }

    private static PreparedShape Build(NestingTask task, NestingPlacement pose, List<PoleFinder.Pole> poles, int index)
    {
        var item = task.Items[pose.Item];
        var rings = Grown(task, pose).Select(WithoutRepeats).ToArray();
        var edges = EdgeTable.Of(rings);
        var turn = RigidMap.FromDegrees(pose.TurnDegrees, default, pose.Mirrored);
        var circles = poles.Select(pole => (Centre: turn.Apply(new Point2(pole.X, pole.Y)), pole.Radius)).ToArray();
        var box = BoxOf(rings[0]);
        return new PreparedShape
        {
            Index = index,
            Item = pose.Item,
            TurnDegrees = pose.TurnDegrees,
            Mirrored = pose.Mirrored,
            Grade = item.Grade,
            LeastGrade = item.LeastGrade,
            EdgeCount = edges.Count,
            X = edges.X,
            Y = edges.Y,
            StepX = edges.StepX,
            StepY = edges.StepY,
            Previous = edges.Previous,
            RingStarts = edges.RingStarts,
            Box = box,
            TrueBox = BoxOf(Rings.ToSteps(pose.Apply(item.Outline))),
            PoleX = Lanes(circles.Select(c => c.Centre.X)),
            PoleY = Lanes(circles.Select(c => c.Centre.Y)),
            PoleRadius = Lanes(circles.Select(c => c.Radius)),
            Poles = circles.Length,
            Bulk = (float)Math.Sqrt(Math.Sqrt(HullArea(rings[0]))),
            Diameter = (float)Math.Sqrt(((double)box.Width * box.Width) + ((double)box.Height * box.Height)),
            Area = (Rings.SignedArea(item.Outline) + item.Holes.Sum(hole => Rings.SignedArea(hole)))
                * Grid.StepsPerMillimetre * Grid.StepsPerMillimetre,
        };
    }

    /// <summary>The ring in steps; turning and snapping may lay two corners on one point.</summary>
    private static ImmutableArray<GridPoint> WithoutRepeats(IReadOnlyList<Point2> ring)
    {
        var steps = Rings.ToSteps(ring);
        return [.. steps.Where((point, i) => point != steps[(i + 1) % steps.Length])];
    }

    private static float[] Lanes(IEnumerable<double> millimetres)
    {
        var lanes = new float[PreparedShape.PoleCount];
        var k = 0;
        foreach (var value in millimetres)
        {
            lanes[k++] = (float)(value * Grid.StepsPerMillimetre);
        }

        return lanes;
    }

    private static StepBox BoxOf(ImmutableArray<GridPoint> ring) => new(
        checked((int)ring.Min(p => p.X)),
        checked((int)ring.Min(p => p.Y)),
        checked((int)ring.Max(p => p.X)),
        checked((int)ring.Max(p => p.Y)));

    /// <summary>Area of the convex hull, square steps.</summary>
    private static double HullArea(ImmutableArray<GridPoint> ring) =>
        Rings.SignedArea([.. ConvexRings.Hull(ring).Select(point => new Point2(point.X, point.Y))]);
}
