using System;
using System.Collections.Generic;
using System.Collections.Immutable;
using System.Linq;
using CoverPattern.Geometry;

namespace CoverPattern.Lays.Nesting.Search;

/// <summary>Edges of some rings as parallel arrays, padded with NaN to a multiple of four so that vectors read no past.</summary>
internal sealed record EdgeTable(int Count, double[] X, double[] Y, double[] StepX, double[] StepY)
{
    public required int[] Previous { get; init; }

    public required ImmutableArray<int> RingStarts { get; init; }

    public static EdgeTable Of(IReadOnlyList<ImmutableArray<GridPoint>> rings)
    {
        var count = rings.Sum(ring => ring.Length);
        var table = new EdgeTable(count, Padded(count), Padded(count), Padded(count), Padded(count))
        {
            Previous = new int[count],
            RingStarts = [0, .. rings.Select((_, k) => rings.Take(k + 1).Sum(ring => ring.Length))],
        };
        for (var k = 0; k < rings.Count; k++)
        {
            table.Fill(rings[k], table.RingStarts[k]);
        }

        return table;
    }

    private static double[] Padded(int count)
    {
        var lanes = new double[(count + 3) / 4 * 4];
        Array.Fill(lanes, double.NaN);
        return lanes;
    }

    private void Fill(ImmutableArray<GridPoint> ring, int start)
    {
        for (var i = 0; i < ring.Length; i++)
        {
            var (from, to) = (ring[i], ring[(i + 1) % ring.Length]);
            X[start + i] = from.X;
            Y[start + i] = from.Y;
            StepX[start + i] = to.X - from.X;
            StepY[start + i] = to.Y - from.Y;
            Previous[start + i] = start + ((i + ring.Length - 1) % ring.Length);
        }
    }
}
