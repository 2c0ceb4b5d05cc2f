using System;
using System.Collections.Generic;
using System.Linq;

namespace CoverPattern.Workshop.Tests.Sewing;

/// <summary>What an opening takes out of the true cover: by laying faces beside each other, or looking at them square to the facet, in the tests' own way.</summary>
internal static class TrueOpening
{
    private const int Samples = 400;

    /// <summary>For every face of the cover the cells that are left of it; faces taken out have none.</summary>
    internal static Dictionary<string, List<TrueCell>> CellsOf(TrueCover cover, OpeningOrder order)
    {
        var planes = order.IsCarried ? Carried(cover, order) : Seen(cover, order);
        return cover.Faces.Values.ToDictionary(
            face => face.Label,
            face => planes.TryGetValue(face.Label, out var plane) ? Cut(face, plane, order) : [new TrueCell(face, face.Area, [], face)],
            StringComparer.Ordinal);
    }

    private static FlatPoint[] AnchorOf(TrueCover cover, OpeningOrder order)
    {
        var face = cover.Faces[order.Facet];
        var up = face.Outward.Cross(face.Round);
        var corners = face.Corners;
        double[] facing = [corners[1].DistanceTo(corners[2]), corners[2].DistanceTo(corners[0]), corners[0].DistanceTo(corners[1])];
        var middle = (1 / facing.Sum()) * ((facing[0] * corners[0]) + (facing[1] * corners[1]) + (facing[2] * corners[2]));
        return [.. corners.Select(corner => new FlatPoint((corner - middle).Dot(face.Round) - order.Right, (corner - middle).Dot(up) - order.Up))];
    }

    /// <summary>Faces laid out one beside the other as far as the outline reaches.</summary>
    private static Dictionary<string, FlatPoint[]> Carried(TrueCover cover, OpeningOrder order)
    {
        var planes = new Dictionary<string, FlatPoint[]>(StringComparer.Ordinal) { [order.Facet] = AnchorOf(cover, order) };
        var next = new Queue<string>(planes.Keys);
        while (next.TryDequeue(out var label))
        {
            var (face, plane) = (cover.Faces[label], planes[label]);
            for (var i = 0; i < plane.Length; i++)
            {
                var (from, to) = (plane[i], plane[(i + 1) % plane.Length]);
                if (face.Edges[i].Neighbour is { } beyond && !planes.ContainsKey(beyond) && Shares(share => order.Beyond(from + (share * (to - from)))).Any(share => order.Beyond(from + (share * (to - from))) < 0))
                {
                    planes.Add(beyond, Unfolded(cover.Faces[beyond], (face.Corners[i], face.Corners[(i + 1) % plane.Length]), (from, to)));
                    next.Enqueue(beyond);
                }
            }
        }

        return planes;
    }

    /// <summary>A face turned about an edge into the plane, to the right of the edge.</summary>
    private static FlatPoint[] Unfolded(TrueFace face, (SpacePoint From, SpacePoint To) edge, (FlatPoint From, FlatPoint To) onto)
    {
        var along = (edge.To - edge.From).Unit;
        var across = along.Cross(face.Outward);
        var flat = (1 / onto.From.DistanceTo(onto.To)) * (onto.To - onto.From);
        var right = new FlatPoint(flat.Y, -flat.X);
        return [.. face.Corners.Select(corner => onto.From + ((corner - edge.From).Dot(along) * flat) + ((corner - edge.From).Dot(across) * right))];
    }

    /// <summary>All faces that look the facet's way, seen square to it.</summary>
    private static Dictionary<string, FlatPoint[]> Seen(TrueCover cover, OpeningOrder order)
    {
        var anchor = cover.Faces[order.Facet];
        if (order.Along is { } along)
        {
            return SeenAlong(cover, along, MiddleOf(cover, order));
        }

        var (up, origin) = (anchor.Outward.Cross(anchor.Round), AnchorOf(cover, order)[0]);
        return cover.Faces.Values.Where(face => face.Outward.Dot(anchor.Outward) > 0.2).ToDictionary(
            face => face.Label,
            face => face.Corners.Select(corner => origin + new FlatPoint((corner - anchor.Corners[0]).Dot(anchor.Round), (corner - anchor.Corners[0]).Dot(up))).ToArray(),
            StringComparer.Ordinal);
    }

    /// <summary>The middle of an opening in space.</summary>
    internal static SpacePoint MiddleOf(TrueCover cover, OpeningOrder order)
    {
        var (anchor, corner) = (cover.Faces[order.Facet], AnchorOf(cover, order)[0]);
        return order.Middle ?? anchor.Corners[0] - (corner.X * anchor.Round) - (corner.Y * anchor.Outward.Cross(anchor.Round));
    }

    /// <summary>All faces that look along a direction, seen against it about a point.</summary>
    private static Dictionary<string, FlatPoint[]> SeenAlong(TrueCover cover, SpacePoint along, SpacePoint middle)
    {
        var across = (Math.Abs(along.Z) < 0.9 ? along.Cross(new SpacePoint(0, 0, 1)) : along.Cross(new SpacePoint(1, 0, 0))).Unit;
        return cover.Faces.Values.Where(face => face.Outward.Dot(along) > 0.2).ToDictionary(
            face => face.Label,
            face => face.Corners.Select(corner => new FlatPoint((corner - middle).Dot(across), (corner - middle).Dot(along.Cross(across)))).ToArray(),
            StringComparer.Ordinal);
    }

    private static List<TrueCell> Cut(TrueFace face, FlatPoint[] plane, OpeningOrder order)
    {
        var gates = Enumerable.Range(0, plane.Length).SelectMany(i => Crossings(plane[i], plane[(i + 1) % plane.Length], order).Select(entry => (Edge: i, entry.Share, entry.Leaves))).ToArray();
        var squeeze = FlatPoint.AreaOf(plane) / face.Area;
        if (gates.Length == 0)
        {
            var isInside = order.Beyond(plane[0]) < 0;
            var hole = !isInside && IsInside(plane, default) && order.Beyond(default) < 0 ? order.Area : 0;
            return isInside ? [] : [new TrueCell(face, face.Area - (hole / squeeze), plane, face)];
        }

        return [.. Enumerable.Range(0, gates.Length).Where(i => gates[i].Leaves).Select(i => Cell(face, plane, order, gates, i, squeeze))];
    }

    /// <summary>From where the border leaves the opening on to where it comes to it again, and back along the rim.</summary>
    private static TrueCell Cell(TrueFace face, FlatPoint[] plane, OpeningOrder order, (int Edge, double Share, bool Leaves)[] gates, int start, double squeeze)
    {
        var (from, to) = (gates[start], gates[(start + 1) % gates.Length]);
        var count = plane.Length;
        int[] between = [.. Enumerable.Range(1, count).Select(step => (from.Edge + step) % count).TakeWhile((corner, i) => i == 0 ? from.Edge != to.Edge || to.Share < from.Share : ((corner + count - 1) % count) != to.Edge)];
        SpacePoint On((int Edge, double Share, bool Leaves) gate) => face.Corners[gate.Edge] + (gate.Share * (face.Corners[(gate.Edge + 1) % count] - face.Corners[gate.Edge]));
        FlatPoint At((int Edge, double Share, bool Leaves) gate) => plane[gate.Edge] + (gate.Share * (plane[(gate.Edge + 1) % count] - plane[gate.Edge]));
        var (begin, end) = (Math.Atan2(At(to).Y, At(to).X), Math.Atan2(At(from).Y, At(from).X));
        var sweep = begin - end < 0 ? begin - end + (2 * Math.PI) : begin - end;
        FlatPoint[] border = [At(from), .. between.Select(corner => plane[corner]), At(to)];
        var rim = Enumerable.Range(1, (10 * Samples) - 1).Select(i => order.OnOutline(begin - (sweep * i / (10 * Samples))));
        var own = face with { Corners = [On(from), .. between.Select(corner => face.Corners[corner]), On(to)] };
        double Steepness((int Edge, double Share, bool Leaves) gate)
        {
            // How fast the border leaves the outline, by the distance a hundredth of a millimetre to both sides.
            var step = plane[(gate.Edge + 1) % count] - plane[gate.Edge];
            var along = (0.01 / step.Length) * step;
            return Math.Abs(order.Beyond(At(gate) + along) - order.Beyond(At(gate) - along)) / 0.02;
        }

        return new TrueCell(own, FlatPoint.AreaOf([.. border, .. rim]) / squeeze, plane, face) { Steepness = Math.Min(Steepness(from), Steepness(to)) };
    }

    /// <summary>Where an edge crosses the outline, each with whether it leaves the opening there.</summary>
    private static IEnumerable<(double Share, bool Leaves)> Crossings(FlatPoint from, FlatPoint to, OpeningOrder order)
    {
        double Beyond(double share) => order.Beyond(from + (share * (to - from)));
        var shares = Shares(Beyond);
        for (var i = 0; i + 1 < shares.Length; i++)
        {
            var (low, high) = (shares[i], shares[i + 1]);
            var leaves = Beyond(low) < 0;
            if (leaves == Beyond(high) < 0)
            {
                continue;
            }

            for (var halving = 0; halving < 60; halving++)
            {
                var middle = (low + high) / 2;
                (low, high) = Beyond(middle) < 0 == leaves ? (middle, high) : (low, middle);
            }

            yield return (low, leaves);
        }
    }

    /// <summary>Shares of an edge to look at: even steps, and between them where the edge comes nearest to the outline, for a corner may just reach over it.</summary>
    private static double[] Shares(Func<double, double> beyond)
    {
        double[] even = [.. Enumerable.Range(0, Samples + 1).Select(i => (double)i / Samples)];
        double[] values = [.. even.Select(beyond)];
        var near = Enumerable.Range(1, Samples - 1)
            .Where(i => Math.Abs(values[i]) <= Math.Min(Math.Abs(values[i - 1]), Math.Abs(values[i + 1])))
            .Select(i => Nearest(beyond, Math.Sign(values[i]), even[i - 1], even[i + 1]));
        return [.. even.Concat(near).Order()];
    }

    private static double Nearest(Func<double, double> beyond, int side, double low, double high)
    {
        for (var third = 0; third < 60; third++)
        {
            var (lower, upper) = (low + ((high - low) / 3), high - ((high - low) / 3));
            (low, high) = side * beyond(lower) < side * beyond(upper) ? (low, upper) : (lower, high);
        }

        return (low + high) / 2;
    }

    private static bool IsInside(FlatPoint[] ring, FlatPoint point) => ring.Select((corner, i) => (ring[(i + 1) % ring.Length] - corner).Cross(point - corner)).All(left => left > 0);
}
