using System;
using System.Collections.Generic;
using System.Collections.Immutable;
using System.Linq;

namespace CoverPattern.Geometry;

/// <summary>Finds joints from the lengths of bars, starting from places near by.</summary>
/// <remarks>
/// Bars are hard: each round takes the shortest step that meets them to first order, x = J' (J J')^-1 r, by Gauss-Newton. The
/// wishes decide within the freedom that bars leave: with P = 1 - J' (J J')^-1 J their least squares are solved in the range of
/// P C', damped by 1e-12 of its scale, so that a freedom that no wish decides stays as it was. Both need one factor of
/// J J', which is narrow when bars come in the order of their joints. Own derivation.
/// </remarks>
public static class BarSolver
{
    private const int MostRounds = 60;
    private const double Exact = 1e-9;
    private const double Damping = 1e-12;

    /// <summary>Solves for the joints.</summary>
    /// <param name="start">Places to begin from, z up.</param>
    /// <param name="bars">Bars; for speed in the order of their joints.</param>
    /// <param name="wishes">What shall hold besides.</param>
    /// <returns>Where the steps came to rest; look at <see cref="BarSolution.WorstBar"/>.</returns>
    /// <exception cref="ArgumentException">The bars depend on each other, so that lengths could contradict.</exception>
    public static BarSolution Solve(IReadOnlyList<Point3> start, ImmutableArray<Bar> bars, ImmutableArray<JointWish> wishes)
    {
        ArgumentNullException.ThrowIfNull(start);

        var joints = start.ToArray();
        for (var round = 1; ; round++)
        {
            var step = Step(joints, bars, wishes);
            var longest = 0.0;
            for (var i = 0; i < joints.Length; i++)
            {
                var own = new Point3(step[3 * i], step[(3 * i) + 1], step[(3 * i) + 2]);
                longest = Math.Max(longest, own.Length);
                joints[i] += own;
            }

            if (longest < Exact || round == MostRounds || !double.IsFinite(longest))
            {
                return new BarSolution(
                    [.. joints],
                    bars.Max(bar => Math.Abs(Point3.Distance(joints[bar.From], joints[bar.To]) - bar.Length)),
                    Wishes(joints, wishes).Select(row => Math.Abs(row.Open)).DefaultIfEmpty().Max(),
                    round);
            }
        }
    }

    private static double[] Step(Point3[] joints, ImmutableArray<Bar> bars, ImmutableArray<JointWish> wishes)
    {
        var directions = bars.Select(bar => (joints[bar.From] - joints[bar.To]).Unit()).ToArray();
        var factor = Factor(directions, bars);
        var open = bars.Select(bar => bar.Length - Point3.Distance(joints[bar.From], joints[bar.To])).ToArray();
        var step = Across(factor.Solve(open), directions, bars, 3 * joints.Length);
        var rows = Wishes(joints, wishes);
        var free = rows.Select(row => Freed(row.Row, factor, directions, bars)).ToArray();
        var (most, count) = (0.0, rows.Length);
        var normal = new double[count][];
        for (var i = 0; i < count; i++)
        {
            normal[i] = [.. Enumerable.Range(0, i + 1).Select(j => Dot(free[i], free[j]))];
            most = Math.Max(most, normal[i][i]);
        }

        if (most == 0)
        {
            return step;
        }

        // Least squares of G z = v, for wishes may contradict: (G G + damping) z = G v.
        double At(int i, int j) => i >= j ? normal[i][j] : normal[j][i];
        var wanted = rows.Select(row => row.Open - Dot(row.Row, step)).ToArray();
        var right = Enumerable.Range(0, count).Select(i => Enumerable.Range(0, count).Sum(j => At(i, j) * wanted[j])).ToArray();
        var squared = Enumerable.Range(0, count).Select(i => Enumerable.Range(0, i + 1)
            .Select(j => Enumerable.Range(0, count).Sum(k => At(i, k) * At(k, j)) + (i == j ? Damping * most * most : 0)).ToArray()).ToArray();
        var shares = new SkylineCholesky(squared, [.. Enumerable.Repeat(0, count)]).Solve(right);
        for (var i = 0; i < count; i++)
        {
            for (var k = 0; k < step.Length; k++)
            {
                step[k] += shares[i] * free[i][k];
            }
        }

        return step;
    }

    /// <summary>The factor of J J': an entry where two bars share a joint.</summary>
    private static SkylineCholesky Factor(Point3[] directions, ImmutableArray<Bar> bars)
    {
        var barsOfJoint = new Dictionary<int, List<int>>();
        var (rows, starts) = (new double[bars.Length][], ImmutableArray.CreateBuilder<int>(bars.Length));
        for (var i = 0; i < bars.Length; i++)
        {
            int[] ends = [bars[i].From, bars[i].To];
            foreach (var end in ends)
            {
                (barsOfJoint.TryGetValue(end, out var list) ? list : barsOfJoint[end] = []).Add(i);
            }

            var touching = ends.SelectMany(end => barsOfJoint[end].Select(other => (Other: other, Sign: (bars[i].From == end ? 1 : -1) * (bars[other].From == end ? 1 : -1)))).ToArray();
            var start = touching.Min(entry => entry.Other);
            rows[i] = new double[i - start + 1];
            starts.Add(start);
            foreach (var (other, sign) in touching)
            {
                rows[i][other - start] += sign * Point3.Dot(directions[i], directions[other]);
            }
        }

        return new SkylineCholesky(rows, starts.ToImmutable());
    }

    /// <summary>J' times forces of the bars.</summary>
    private static double[] Across(double[] forces, Point3[] directions, ImmutableArray<Bar> bars, int length)
    {
        var sum = new double[length];
        for (var i = 0; i < bars.Length; i++)
        {
            Add(sum, bars[i].From, forces[i] * directions[i]);
            Add(sum, bars[i].To, -forces[i] * directions[i]);
        }

        return sum;
    }

    /// <summary>What of a direction the bars leave free.</summary>
    private static double[] Freed(double[] row, SkylineCholesky factor, Point3[] directions, ImmutableArray<Bar> bars)
    {
        Point3 Of(int joint) => new(row[3 * joint], row[(3 * joint) + 1], row[(3 * joint) + 2]);
        var stretch = bars.Select((bar, i) => Point3.Dot(directions[i], Of(bar.From) - Of(bar.To))).ToArray();
        var held = Across(factor.Solve(stretch), directions, bars, row.Length);
        return [.. row.Zip(held, (own, taken) => own - taken)];
    }

    /// <summary>One row a wish, and how much of it is open.</summary>
    private static (double[] Row, double Open)[] Wishes(Point3[] joints, ImmutableArray<JointWish> wishes)
    {
        var circles = wishes.Where(wish => wish.Kind == JointWishKind.OneCircle).GroupBy(wish => wish.Value, wish => wish.Joint)
            .ToDictionary(group => group.Key, group => (Joints: group.ToArray(), Mean: group.Average(joint => joints[joint].Plan.Length)));
        return [.. wishes.Select(wish =>
        {
            var row = new double[3 * joints.Length];
            var at = joints[wish.Joint];
            if (wish.Kind == JointWishKind.Height)
            {
                row[(3 * wish.Joint) + 2] = 1;
                return (row, wish.Value - at.Z);
            }

            Add(row, wish.Joint, Outward(at));
            if (wish.Kind == JointWishKind.Radius)
            {
                return (row, wish.Value - at.Plan.Length);
            }

            var (own, mean) = circles[wish.Value];
            foreach (var joint in own)
            {
                Add(row, joint, (-1.0 / own.Length) * Outward(joints[joint]));
            }

            return (row, mean - at.Plan.Length);
        })];
    }

    private static Point3 Outward(Point3 at) => (at with { Z = 0 }).Unit();

    private static void Add(double[] sum, int joint, Point3 step)
    {
        sum[3 * joint] += step.X;
        sum[(3 * joint) + 1] += step.Y;
        sum[(3 * joint) + 2] += step.Z;
    }

    private static double Dot(double[] one, double[] other)
    {
        var sum = 0.0;
        for (var i = 0; i < one.Length; i++)
        {
            sum += one[i] * other[i];
        }

        return sum;
    }
}
