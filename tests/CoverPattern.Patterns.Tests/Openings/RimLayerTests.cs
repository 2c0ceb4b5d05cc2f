using System;
using System.Collections.Generic;
using System.Linq;
using CoverPattern.Geometry;
using CoverPattern.Patterns.Frames;
using CoverPattern.Patterns.Jobs;
using CoverPattern.Patterns.Openings;
using CoverPattern.Patterns.Seams;
using CoverPattern.Patterns.Shells;
using CsCheck;

namespace CoverPattern.Patterns.Tests.Openings;

/// <summary>Rims carried and projected over edges, and what they take out.</summary>
public class RimLayerTests
{
    private static readonly Job Dome = Jobs.Dome(3, 5, 3657.6) with { StandOff = new StandOffWish(Jobs.Mm(0), Jobs.Mm(0), Jobs.Mm(0)) };
    private static readonly Shell Cover = Jobs.Shell(Dome);
    private static readonly ClippedShell Surface = new(Cover);

    [Fact]
    public void Lay_CarriedRoundEachHub_MissesItselfByItsDefect()
    {
        // 2 r sin(defect / 2) at r = 600 mm and the defects 6.3473, 7.8969 and 8.5010 degrees of the 3V [Descartes; own calculation]: 66.4, 82.6, 88.9 mm.
        var circle = Circles.Unsnapped(default, 600);
        var gaps = InnerHubs().Select(hub => RimLayer.Lay(Surface, hub, PlaneMap.About(hub.At, new Point2(0, 1)), circle, seen: null))
            .Select(laid => (laid.IsLaid, Gap: Math.Round(laid.GapMm, 1))).ToArray();

        Assert.Equal([(false, 66.4), (false, 82.6), (false, 88.9)], gaps.Distinct().Order());
    }

    [Fact]
    public void Lay_CarriedOverFoldsAndSeams_KeepsLengthAndArea()
    {
        var outline = OutlineShapes.Turned(OutlineShapes.Draw(new OutlineWish(OutlineForm.Rectangle) { Width = Jobs.Mm(700), Height = Jobs.Mm(500) }), 10);
        var centre = EdgeMiddle();

        var laid = RimLayer.Lay(Surface, centre, PlaneMap.About(centre.At, new Point2(0, 1)), outline, seen: null);

        var cut = Subdivider.Cut(Cover, Plan(), [new Region("R", "test", centre, new Point2(0, 1), 15, laid.Rim)]);
        Assert.Equal(2, laid.Rim.Length);
        Assert.Equal(Rings.Perimeter(outline), laid.Rim.Sum(stretch => stretch.Length), 1e-8);
        Assert.Equal(700 * 500, cut.Insides[0].Patches.Sum(patch => patch.Area), 1e-9 * 700 * 500);
    }

    [Fact]
    public void Lay_ProjectedRoundAHub_ClosesByTheSameCrossings()
    {
        var job = Dome with { Openings = [Opening(OutlineForm.Circle, "F5.01", up: 400) with { Laid = LayingRule.Either, Outline = new OutlineWish(OutlineForm.Circle) { Width = Jobs.Mm(1800) } }] };

        var opening = Assert.Single(OpeningLayer.Lay(job, FrameBuilder.Build(job.Frame), Cover).Openings);

        Assert.False(opening.IsCarried);
        Assert.Equal("H5.01", string.Join(' ', opening.HubsInside));
        Assert.All(opening.Region.Rim.Zip(opening.Region.Rim.Skip(1).Append(opening.Region.Rim[0])), pair => Assert.Equal(pair.First.Leave, pair.Second.Enter));
        // What lies aslant to the plane of the outline is larger than the outline, never smaller.
        Assert.InRange(Inside(opening).Patches.Sum(patch => patch.Area), Math.PI * 900 * 900, 1.3 * Math.PI * 900 * 900);
    }

    [Fact]
    public void Lay_CircleOverAnEdge_IsAsRoundAsItsChords()
    {
        // Points of the curve within 0.25 mm of a crossing are left out: by hand, at most two triangles 8 mm long and 0.01 mm high at each of two crossings.
        var centre = EdgeMiddle();

        var laid = RimLayer.Lay(Surface, centre, PlaneMap.About(centre.At, new Point2(0, 1)), Circles.Unsnapped(default, 350), seen: null);

        var cut = Subdivider.Cut(Cover, Plan(), [new Region("R", "test", centre, new Point2(0, 1), 15, laid.Rim)]);
        Assert.Equal(Math.PI * 350 * 350, cut.Insides[0].Patches.Sum(patch => patch.Area), 4 * 8 * 0.01 / 2);
    }

    [Fact]
    public void Lay_CarriedRoundAHub_IsRefusedWithTheGap()
    {
        var job = Dome with { Openings = [Opening(OutlineForm.Circle, "F5.01", up: 400) with { Laid = LayingRule.Carried, Outline = new OutlineWish(OutlineForm.Circle) { Width = Jobs.Mm(1800) } }] };

        var laid = OpeningLayer.Lay(job, FrameBuilder.Build(job.Frame), Cover);

        Assert.Contains("misses its own beginning by", Assert.Single(laid.Faults).Said, StringComparison.Ordinal);
        Assert.Empty(laid.Openings);
    }

    [Fact]
    public void Lay_WholeFacets_AreInsetByTheMarginAllRound()
    {
        // By hand: the inset of a triangle is like it, smaller by margin over the radius of its inscribed circle; the sides of five
        // facets round the top hub are shorter at both ends by margin / tan(half the cloth's angle there).
        var rho = 2 * Rings.SignedArea(Cover.Faces[Face("F3.05")].Chart) / Rings.Perimeter(Cover.Faces[Face("F3.05")].Chart);
        var top = Enumerable.Range(1, 5).Select(i => Face($"F5.0{i}")).ToArray();
        var (ring, side) = (Cover.Faces[top[0]], Point2.Distance(Cover.Faces[top[0]].Chart[0], Cover.Faces[top[0]].Chart[1]));
        var half = Math.Acos(Point2.Dot((ring.Chart[1] - ring.Chart[0]).Unit(), (ring.Chart[2] - ring.Chart[0]).Unit()));

        var one = FacetRim.Lay(Surface, [Face("F3.05")], 80);
        var five = FacetRim.Lay(Surface, top, 80);

        Assert.Equal(Rings.SignedArea(Cover.Faces[Face("F3.05")].Chart) * Math.Pow(1 - (80 / rho), 2), Rings.SignedArea(one.Rim[0].Points), 1e-6);
        Assert.Equal(5, five.Rim.Length);
        Assert.Equal(5 * (side - (160 / Math.Tan(half))), five.Rim.Sum(stretch => stretch.Length), 1e-6);
    }

    [Fact]
    public void Cut_RandomOutlines_AreasSumAndOtherLabelsStay()
    {
        var whole = Subdivider.Cut(Cover, Plan());
        var (area, lengths) = (whole.Patches.Sum(patch => patch.Area), whole.Arcs.ToDictionary(arc => arc.Label, arc => arc.LengthMm, StringComparer.Ordinal));
        var laid = 0;
        Gen.Select(Gen.Int[0, Cover.Faces.Count(face => face.Kind == FaceKind.Facet) - 1], Gen.Double[-500, 500], Gen.Double[-500, 500], Gen.Double[0, 360], Gen.Double[100, 1500], Gen.Int[3, 9], Gen.Bool).Sample(
            (face, right, up, turned, width, sides, isProjected) =>
            {
                var wish = Opening(OutlineForm.Regular, Cover.Faces[face].Label, up, right) with
                {
                    Laid = isProjected ? LayingRule.Projected : LayingRule.Either,
                    Outline = new OutlineWish(OutlineForm.Regular) { Width = Jobs.Mm(width), Sides = sides },
                };
                if (OpeningPlacer.Lay(Surface, wish with { Place = wish.Place with { Turned = turned } }, 0, []) is not { } opening)
                {
                    return;
                }

                laid++;
                var cut = Subdivider.Cut(Cover, Plan(), [opening.Region]);
                Assert.Equal(area, cut.Patches.Sum(patch => patch.Area) + cut.Insides[0].Patches.Sum(patch => patch.Area), 1e-9 * area);
                Assert.Equal(cut.Arcs.Where(arc => arc.Role == EdgeRole.Rim).Sum(arc => arc.LengthMm), cut.Insides[0].Arcs.Where(arc => arc.Role == EdgeRole.Rim).Sum(arc => arc.LengthMm), 1e-9);

                // What is not cut keeps label and length; the parts of what is cut sum to no more than the whole.
                var parts = cut.Arcs.Where(arc => arc.Role != EdgeRole.Rim).GroupBy(arc => arc.Label.TrimEnd('a', 'b', 'c'), StringComparer.Ordinal).ToArray();
                Assert.All(parts, part => Assert.InRange(part.Sum(arc => arc.LengthMm), 0, lengths[part.Key] + 1e-9));
                Assert.Equal(lengths.Values.Sum(), parts.Sum(part => part.Sum(arc => arc.LengthMm)) + cut.Insides[0].Arcs.Where(arc => arc.Role != EdgeRole.Rim).Sum(arc => arc.LengthMm), 1e-6);
            },
            iter: 300,
            threads: 1);

        Assert.InRange(laid, 150, 300);
    }

    private static OpeningWish Opening(OutlineForm form, string facet, double up = 0, double right = 0) =>
        new(new OutlineWish(form), new OpeningPlace(facet, Jobs.Mm(right), Jobs.Mm(up)), LayingRule.Either, Jobs.Mm(15));

    private static SeamPlan Plan() => SeamPlanner.Plan(Dome, Cover, PanelPlan.SingleFacets(Cover));

    private static Subdivision Inside(LaidOpening opening) => Subdivider.Cut(Cover, Plan(), [opening.Region]).Insides[0];

    private static int Face(string label) => Cover.Faces.Select(face => face.Label).ToList().IndexOf(label);

    /// <summary>Every hub with facets all round, as a corner of one of them.</summary>
    private static IEnumerable<SurfacePoint> InnerHubs()
    {
        var border = Cover.Edges.Where(edge => edge.Right < 0 || Cover.Faces[edge.Left].Kind != Cover.Faces[edge.Right].Kind).SelectMany(edge => new[] { edge.From, edge.To }).ToHashSet();
        return Cover.Faces.SelectMany((face, i) => face.Nodes.Select((node, at) => (Node: node, Point: new SurfacePoint(i, face.Chart[at]))))
            .Where(entry => Cover.Faces[entry.Point.Face].Kind == FaceKind.Facet && !border.Contains(entry.Node)).DistinctBy(entry => entry.Node).Select(entry => entry.Point);
    }

    /// <summary>A point a little beside the middle of an edge between two facets.</summary>
    private static SurfacePoint EdgeMiddle()
    {
        var face = Face("F3.05");
        var chart = Cover.Faces[face].Chart;
        return new SurfacePoint(face, Point2.Between(chart[1], chart[2], 0.47) + new Point2(-7, 0));
    }
}
