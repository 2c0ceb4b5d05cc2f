using System;
using System.Collections.Generic;
using System.Linq;

namespace CoverPattern.Workshop.Tests.Sewing;

/// <summary>What an opening takes out of the true cover: by laying faces beside each other, or looking at them square to the facet, in the tests' own way.</summary>
internal static class TrueOpening
{
    private const int Samples = 400;

    // By the openings' page, millimetres.
    private const double LeastFromCorner = 1;

    /// <summary>For every face of the cover the cells that openings apart from each other leave of it; faces taken out have none.</summary>
    internal static Dictionary<string, List<TrueCell>> CellsOf(TrueCover cover, params IReadOnlyList<OpeningOrder> orders)
    {
        var seen = orders.SelectMany(order => (order.IsCarried ? Carried(cover, order) : Seen(cover, order)).Select(plane => new SeenFace(order, plane.Value, cover.Faces[plane.Key])))
            .ToLookup(plane => plane.Face.Label, StringComparer.Ordinal);
        return cover.Faces.Values.ToDictionary(face => face.Label, face => Cut(face, [.. seen[face.Label]]), StringComparer.Ordinal);
    }

    /// <summary>Whether a corner of the cover lies inside an opening that is carried; where an edge ends at the finished edge there is none that cloth has to go round.</summary>
    internal static bool HoldsCorner(TrueCover cover, OpeningOrder order) =>
        Carried(cover, order).Any(entry => entry.Value.Where((_, i) => !IsOnHem(cover.Faces[entry.Key], i)).Any(corner => order.Beyond(corner) < 0));

    /// <summary>Whether the rim of an opening that is carried crosses an edge nearer to its end than a seam can be parted there.</summary>
    internal static bool MeetsCorner(TrueCover cover, OpeningOrder order) => Carried(cover, order).Values
        .SelectMany(plane => plane.Select((from, i) => (From: from, To: plane[(i + 1) % plane.Length])))
        .Any(edge => Crossings(edge.From, edge.To, order).Any(gate => Math.Min(gate.Share, 1 - gate.Share) * edge.From.DistanceTo(edge.To) < LeastFromCorner));

    private static bool IsOnHem(TrueFace face, int corner) =>
        face.Edges[corner].Neighbour is null || face.Edges[(corner + face.Edges.Count - 1) % face.Edges.Count].Neighbour is null;

    /// <summary>What one opening takes out of the cover, square millimetres.</summary>
    internal static double AreaOf(TrueCover cover, OpeningOrder order) =>
        cover.Faces.Values.Sum(face => face.Area) - CellsOf(cover, order).Values.SelectMany(list => list).Sum(cell => cell.Area);

    private static FlatPoint[] AnchorOf(TrueCover cover, OpeningOrder order)
    {
        var face = cover.Faces[order.Facet];
        var up = face.Outward.Cross(face.Round);
        var middle = WindowShop.Incentre(face.Uncut);
        return [.. face.Corners.Select(corner => new FlatPoint((corner - middle).Dot(face.Round) - order.Right, (corner - middle).Dot(up) - order.Up))];
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

    private static List<TrueCell> Cut(TrueFace face, SeenFace[] seen)
    {
        var count = face.Corners.Count;
        var gates = (
            from edge in Enumerable.Range(0, count)
            from plane in seen
            from gate in Crossings(plane.Plane[edge], plane.Plane[(edge + 1) % count], plane.Order)
            select new Gate(plane, edge, gate.Share, gate.Leaves)).OrderBy(gate => gate.Edge).ThenBy(gate => gate.Share).ToArray();
        var holes = seen.Where(plane => gates.All(gate => gate.Of != plane) && IsInside([.. plane.Plane], default) && plane.Order.Beyond(default) < 0 && plane.Order.Beyond(plane.Plane[0]) > 0).ToArray();
        if (gates.Length > 0)
        {
            var (cells, left) = (new List<TrueCell>(), Enumerable.Range(0, gates.Length).Where(i => gates[i].Leaves).ToList());
            while (left.Count > 0)
            {
                cells.Add(WithoutHoles(Cell(face, seen, gates, left), holes));
            }

            return cells;
        }

        return seen.Any(plane => plane.Order.Beyond(plane.Plane[0]) < 0) ? [] : [WithoutHoles((new TrueCell(face, face.Area, seen, face), face.Corners), holes)];
    }

    /// <summary>A cell less the openings that lie wholly inside it.</summary>
    private static TrueCell WithoutHoles((TrueCell Cell, IReadOnlyList<SpacePoint> Ring) cut, SeenFace[] holes) => cut.Cell with
    {
        Area = cut.Cell.Area - holes.Where(hole => IsAround([.. cut.Ring.Select(hole.ToPlane)], default)).Sum(hole => hole.Order.Area / hole.Squeeze),
    };

    /// <summary>From where the border leaves an opening on to where it comes to one, back along that rim to where the border leaves it again, and so on until it comes round.</summary>
    private static (TrueCell Cell, IReadOnlyList<SpacePoint> Ring) Cell(TrueFace face, SeenFace[] seen, Gate[] gates, List<int> left)
    {
        var (corners, ring, at) = (new List<SpacePoint>(), new List<SpacePoint>(), left[0]);
        while (left.Remove(at))
        {
            var (from, to) = (gates[at], gates[(at + 1) % gates.Length]);
            SpacePoint[] border = [from.On, .. Between(from, to, face.Corners.Count).Select(corner => face.Corners[corner]), to.On];
            var back = Enumerable.Range(0, gates.Length).Where(i => gates[i].Of == to.Of && gates[i].Leaves).MinBy(i => Sweep(to, gates[i]));
            corners.AddRange(border);
            ring.AddRange([.. border, .. Enumerable.Range(1, (10 * Samples) - 1).Select(i => to.Of.ToSpace(to.Of.Order.OnOutline(to.Angle - (Sweep(to, gates[back]) * i / (10 * Samples)))))]);
            at = back;
        }

        // The area in the chart of the face itself.
        var (along, across) = (face.Round, face.Outward.Cross(face.Round));
        var area = FlatPoint.AreaOf([.. ring.Select(point => new FlatPoint((point - ring[0]).Dot(along), (point - ring[0]).Dot(across)))]);
        return (new TrueCell(face with { Corners = corners }, area, seen, face) { Steepness = gates.Min(gate => gate.Steepness) }, ring);
    }

    private static IEnumerable<int> Between(Gate from, Gate to, int count) => Enumerable.Range(1, count).Select(step => (from.Edge + step) % count)
        .TakeWhile((corner, i) => i == 0 ? from.Edge != to.Edge || to.Share < from.Share : ((corner + count - 1) % count) != to.Edge);

    /// <summary>By how much one turns clockwise about the middle of an opening from one gate to another.</summary>
    private static double Sweep(Gate from, Gate to) => from.Angle - to.Angle < 0 ? from.Angle - to.Angle + (2 * Math.PI) : from.Angle - to.Angle;

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

    /// <summary>Whether a ring, which may bend inward, goes round a point.</summary>
    private static bool IsAround(FlatPoint[] ring, FlatPoint point) => DrawnFaults.IsInside(ring, point);

    /// <summary>Where a rim crosses the border of a face.</summary>
    /// <param name="Of">The face in the plane of its opening.</param>
    /// <param name="Edge">Index of the face's edge.</param>
    /// <param name="Share">How far along.</param>
    /// <param name="Leaves">Whether the border leaves the opening there.</param>
    private sealed record Gate(SeenFace Of, int Edge, double Share, bool Leaves)
    {
        private int Next => (Edge + 1) % Of.Plane.Count;

        internal SpacePoint On => Of.Face.Corners[Edge] + (Share * (Of.Face.Corners[Next] - Of.Face.Corners[Edge]));

        internal double Angle => Math.Atan2(At.Y, At.X);

        /// <summary>How fast the border leaves the outline, by the distance a hundredth of a millimetre to both sides.</summary>
        internal double Steepness
        {
            get
            {
                var step = Of.Plane[Next] - Of.Plane[Edge];
                var along = (0.01 / step.Length) * step;
                return Math.Abs(Of.Order.Beyond(At + along) - Of.Order.Beyond(At - along)) / 0.02;
            }
        }

        private FlatPoint At => Of.Plane[Edge] + (Share * (Of.Plane[Next] - Of.Plane[Edge]));
    }
}
