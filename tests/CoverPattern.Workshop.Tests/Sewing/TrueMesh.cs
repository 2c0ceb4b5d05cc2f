using System;
using System.Collections.Generic;
using System.Globalization;
using System.Linq;

namespace CoverPattern.Workshop.Tests.Sewing;

/// <summary>Any frame as hubs and facets, labelled by the promises of the frame's page: rings and rows from the base up, positions counter-clockwise from the front.</summary>
internal sealed class TrueMesh
{
    // Slopes, lengths (as shares) and bearings (radians) nearer than these are equal: rounding of double arithmetic.
    private const double Alike = 1e-6;
    private const double SameBearing = 1e-9;

    // Hubs this near, as a share of the frame's size, are one place.
    private const double SamePlace = 1e-6;

    private readonly int[] rings;

    /// <param name="hubs">Hub centres, millimetres.</param>
    /// <param name="faces">Rings of hubs, counter-clockwise seen from outside.</param>
    /// <param name="bends">Pairs of hubs between which the cloth goes over a line without a strut.</param>
    internal TrueMesh(IReadOnlyList<SpacePoint> hubs, IReadOnlyList<int[]> faces, IReadOnlyList<(int From, int To)> bends)
    {
        Base = BaseOf(hubs, faces);
        var deck = Base.Min(hub => hubs[hub].Z);
        Hubs = [.. hubs.Select(hub => hub with { Z = hub.Z - deck })];
        rings = RingsOf(faces);
        Facets = [.. Labelled(faces)];
        BaseEdges = [.. Base.Select((hub, i) => (FacetWith(hub, Base[(i + 1) % Base.Count]), hub, Base[(i + 1) % Base.Count]))];
        Bends = [.. bends.Select(bend => (Math.Min(bend.From, bend.To), Math.Max(bend.From, bend.To)))];
        Sectors = TurnsOf();
    }

    /// <summary>Hub centres, the lowest of the base at z = 0, millimetres.</summary>
    internal IReadOnlyList<SpacePoint> Hubs { get; }

    /// <summary>Each with its ring edge first; a standing one has it below.</summary>
    internal IReadOnlyList<(string Label, int Row, int[] Hubs, bool Stands)> Facets { get; }

    /// <summary>Base hubs, counter-clockwise, the first one at or after the front.</summary>
    internal IReadOnlyList<int> Base { get; }

    /// <summary>The base chords as their facets run along them.</summary>
    internal IReadOnlyList<(int Facet, int From, int To)> BaseEdges { get; }

    internal HashSet<(int From, int To)> Bends { get; }

    /// <summary>How many turns about the upright axis bring the frame to itself.</summary>
    internal int Sectors { get; }

    internal int Rows => Facets.Max(facet => facet.Row);

    /// <summary>Struts between a hub and the base.</summary>
    internal int RingOf(int hub) => rings[hub];

    internal static TrueMesh Of(TrueFrame frame, double radius) =>
        new([.. frame.Hubs.Select(hub => radius * hub)], [.. frame.Facets.Select(facet => facet.Hubs)], []);

    /// <summary>Facets that hang together over bends, by label: each such set is one piece.</summary>
    internal IEnumerable<string[]> BentTogether()
    {
        var set = Enumerable.Range(0, Facets.Count).ToArray();
        foreach (var (from, to) in Bends)
        {
            var pair = Enumerable.Range(0, Facets.Count).Where(facet => Facets[facet].Hubs.Contains(from) && Facets[facet].Hubs.Contains(to)).ToArray();
            var (kept, joined) = (set[pair[0]], set[pair[^1]]);
            set = [.. set.Select(own => own == joined ? kept : own)];
        }

        return set.Select((own, facet) => (own, Facets[facet].Label)).GroupBy(entry => entry.own).Where(group => group.Count() > 1).Select(group => group.Select(entry => entry.Label).ToArray());
    }

    /// <summary>Of the corners' centre, counter-clockwise from +x seen from above; the middle itself counts as the front.</summary>
    internal static double Bearing(IEnumerable<SpacePoint> corners)
    {
        var centre = corners.Aggregate((sum, corner) => sum + corner);
        if (Math.Abs(centre.X) + Math.Abs(centre.Y) <= SameBearing * Math.Abs(centre.Z))
        {
            return 0;
        }

        var angle = Math.Atan2(centre.Y, centre.X);
        return Math.Round((angle < -SameBearing ? angle + (2 * Math.PI) : Math.Max(angle, 0)) / SameBearing) * SameBearing;
    }

    private static IEnumerable<(int From, int To)> Sides(int[] face) => face.Select((hub, i) => (hub, face[(i + 1) % face.Length]));

    /// <summary>The longest line of edges that one facet only has.</summary>
    private static int[] BaseOf(IReadOnlyList<SpacePoint> hubs, IReadOnlyList<int[]> faces)
    {
        var sides = faces.SelectMany(Sides).ToHashSet();
        var next = sides.Where(side => !sides.Contains((side.To, side.From))).ToDictionary(side => side.From, side => side.To);
        var loops = new List<List<int>>();
        while (next.Count > 0)
        {
            loops.Add([]);
            for (var at = next.Keys.Min(); next.Remove(at, out var after); at = after)
            {
                loops[^1].Add(at);
            }
        }

        var longest = loops.MaxBy(loop => loop.Select((hub, i) => hubs[hub].DistanceTo(hubs[loop[(i + 1) % loop.Count]])).Sum())!;
        var start = longest.IndexOf(longest.MinBy(hub => Bearing([hubs[hub]])));
        return [.. longest.Skip(start), .. longest.Take(start)];
    }

    private int[] RingsOf(IReadOnlyList<int[]> faces)
    {
        var found = Enumerable.Repeat(int.MaxValue, Hubs.Count).ToArray();
        foreach (var hub in Base)
        {
            found[hub] = 0;
        }

        // Longer and longer ways until nothing gets shorter.
        for (var changed = true; changed;)
        {
            changed = false;
            foreach (var (from, to) in faces.SelectMany(Sides).Where(side => found[side.From] != int.MaxValue || found[side.To] != int.MaxValue))
            {
                var least = Math.Min(found[from], found[to]) + 1;
                changed |= found[from] > least || found[to] > least;
                (found[from], found[to]) = (Math.Min(found[from], least), Math.Min(found[to], least));
            }
        }

        return found;
    }

    private IEnumerable<(string Label, int Row, int[] Hubs, bool Stands)> Labelled(IReadOnlyList<int[]> faces)
    {
        var all = faces.Select(face => (Row: 1 + face.Min(hub => rings[hub]), Hubs: RingEdgeFirst(face))).ToArray();
        var (rows, longest) = (all.Max(face => face.Row), all.CountBy(face => face.Row).Max(row => row.Value));
        string Padded(int number, int largest) =>
            number.ToString(CultureInfo.InvariantCulture).PadLeft(largest.ToString(CultureInfo.InvariantCulture).Length, '0');
        double Height(IEnumerable<int> corners) => corners.Average(hub => Hubs[hub].Z);
        foreach (var row in all.GroupBy(face => face.Row))
        {
            foreach (var (face, i) in row.OrderBy(face => Bearing(face.Hubs.Select(hub => Hubs[hub]))).ThenByDescending(face => Height(face.Hubs)).Select((face, i) => (face, i)))
            {
                yield return ("F" + Padded(row.Key, rows) + "." + Padded(i + 1, longest), row.Key, face.Hubs, Height(face.Hubs) >= Height(face.Hubs.Take(2)));
            }
        }
    }

    /// <summary>Both hubs in one ring; of several such edges the most level, then the longest, then the lowest, then the first one round from the front.</summary>
    private int[] RingEdgeFirst(int[] face)
    {
        double Steps((int From, int To) side) => Math.Abs(rings[side.From] - rings[side.To]);
        double Length((int From, int To) side) => Hubs[side.From].DistanceTo(Hubs[side.To]);
        double Slope((int From, int To) side) => Math.Abs(Hubs[side.From].Z - Hubs[side.To].Z) / Length(side);
        var sides = Sides(face).ToArray();
        sides = [.. sides.Where(side => Steps(side) == sides.Min(Steps))];
        sides = [.. sides.Where(side => Slope(side) <= sides.Min(Slope) + Alike)];
        sides = [.. sides.Where(side => Length(side) >= sides.Max(Length) - (Alike * sides.Max(Length)))];
        double Height((int From, int To) side) => Hubs[side.From].Z + Hubs[side.To].Z;
        sides = [.. sides.Where(side => Height(side) <= sides.Min(Height) + (Alike * Length(side)))];
        var start = Array.IndexOf(face, sides.MinBy(side => Bearing([Hubs[side.From], Hubs[side.To]])).From);
        return [.. face[start..], .. face[..start]];
    }

    private int FacetWith(int from, int to) => Enumerable.Range(0, Facets.Count).Single(facet => Sides(Facets[facet].Hubs).Contains((from, to)));

    private int TurnsOf()
    {
        var size = Hubs.Max(hub => hub.Length);
        bool IsTurn(double angle) => Hubs.All(hub => Hubs.Any(other =>
            other.DistanceTo(new SpacePoint((Math.Cos(angle) * hub.X) - (Math.Sin(angle) * hub.Y), (Math.Sin(angle) * hub.X) + (Math.Cos(angle) * hub.Y), hub.Z)) <= SamePlace * size));
        var first = Math.Atan2(Hubs[Base[0]].Y, Hubs[Base[0]].X);
        return Base.Count(hub => IsTurn(Math.Atan2(Hubs[hub].Y, Hubs[hub].X) - first));
    }
}
