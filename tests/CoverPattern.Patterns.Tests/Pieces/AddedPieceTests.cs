using System;
using System.Collections.Immutable;
using System.Linq;
using CoverPattern.Geometry;
using CoverPattern.Patterns.Jobs;
using CoverPattern.Patterns.Pieces;
using CoverPattern.Patterns.Seams;

namespace CoverPattern.Patterns.Tests.Pieces;

public class AddedPieceTests
{
    private static readonly ImmutableArray<Point2> Quarters = [new(1, 0), new(0, 1), new(-1, 0), new(0, -1)];

    [Fact]
    public void Finish_Annulus_HasCirclesForItsLines()
    {
        var set = Finish(Ring("W1", "R001")).Set;

        var ring = set.Patterns.Single(pattern => pattern.Kind == PieceKind.WindowRing);
        // By hand: a ring from 300 to 335 mm with 12 mm turned under outside and inside is cut at 347 and 288 mm.
        Assert.Equal("canvas", ring.Cloth);
        Assert.Equal(Circle(335), Rings.SignedArea(ring.SewLine), 2.0);
        Assert.Equal(Circle(347), Rings.SignedArea(ring.CutLine), 2.0);
        Assert.Equal(-Circle(300), Rings.SignedArea(ring.Cutouts[0].Rim), 2.0);
        Assert.Equal(-Circle(288), Rings.SignedArea(ring.Cutouts[0].CutLine), 2.0);
        Assert.Equal((0, 0, EdgeRole.Turned), (ring.Runs.Single().From, ring.Runs.Single().To, ring.Runs.Single().Role));
        Assert.Equal((0, 0, EdgeRole.Rim), (ring.Cutouts[0].Run.From, ring.Cutouts[0].Run.To, ring.Cutouts[0].Run.Role));
        Assert.Equal(2 * Math.PI * 300, ring.Cutouts[0].Run.LengthMm, 0.1);
        Assert.InRange(ring.LabelRadius, 16, 17.6);
        Assert.Empty(ring.Facets);
    }

    [Fact]
    public void Finish_RoundMarks_StandOnTheirCircles()
    {
        var ring = Finish(Ring("W1", "R001")).Set.Patterns.Single(pattern => pattern.Kind == PieceKind.WindowRing);

        var centre = Rings.Bounds(ring.CutLine).Centre;
        Assert.Equal(4, ring.Notches.Count(notch => notch.Run == 1));
        Assert.All(ring.Notches.Where(notch => notch.Run == 1), notch =>
        {
            // The rim is 300, its cut line 288 mm from the middle; ticks are 8 mm long.
            Assert.Equal(300, Point2.Distance(centre, notch.OnSewLine), 0.03);
            Assert.Equal(288, Point2.Distance(centre, notch.Outer), 0.03);
            Assert.Equal(296, Point2.Distance(centre, notch.Inner), 0.03);
        });
        // Holes run clockwise from the right: right, down, left, up.
        Assert.Equal([0, 1, 2, 3], ring.Notches.Select(notch => (int)Math.Round(4 * notch.AtMm / ring.Cutouts[0].Run.LengthMm)));
        Assert.True(ring.Notches[1].OnSewLine.Y < centre.Y);
    }

    [Fact]
    public void Finish_PairOfAddedPieces_ArePartnersBothWays()
    {
        var set = Finish(Ring("W1", "R001"), Disc("W1p", 300, new AddedEdge("R001", IsSecond: false, EdgeRole.Rim, 5))).Set;

        var (ring, disc) = (set.Pieces.Single(piece => piece.Label == "W1"), set.Pieces.Single(piece => piece.Label == "W1p"));
        Assert.Equal(new PieceRun("R001", EdgeRole.Rim, new PartnerRun("W1p", 0)), ring.Runs[1]);
        Assert.Equal(new PieceRun("R001", EdgeRole.Rim, new PartnerRun("W1", 1)), disc.Runs[0]);
        Assert.Equal(new PieceRun("U001", EdgeRole.Turned, Partner: null), ring.Runs[0]);
        var byId = set.Patterns.ToDictionary(pattern => pattern.Id);
        Assert.Equal(byId[ring.Pattern].Cutouts[0].Run.ArcClass, byId[disc.Pattern].Runs[0].ArcClass);
    }

    [Fact]
    public void Finish_EqualAddedPieces_ShareAPatternOnAllCovers()
    {
        var set = Finish(job => job with { Covers = 3 }, Ring("W1", "R001"), Ring("W2", "R002"), Disc("W3", 300, new AddedEdge("X1", false, EdgeRole.Raw, 0))).Set;

        Assert.Equal(6, set.Patterns.Single(pattern => pattern.Kind == PieceKind.WindowRing).Quantity);
        Assert.Equal(3, set.Patterns.Single(pattern => pattern.Kind == PieceKind.Pane).Quantity);
        Assert.Contains(set.Pieces, piece => piece.Label == "C3 W2");
    }

    [Fact]
    public void Finish_EqualShapesOfOtherClothOrMarks_AreOtherPatterns()
    {
        var edge = new AddedEdge("X1", IsSecond: false, EdgeRole.Raw, 0);

        var set = Finish(
            Disc("D1", 100, edge),
            Disc("D2", 100, edge with { Arc = "X2" }) with { Cloth = "canvas" },
            Disc("D3", 100, edge with { Arc = "X3", Marks = Quarters }),
            Disc("D4", 100, edge with { Arc = "X4", Marks = [.. Quarters.Take(3)] }),
            Disc("D5", 100, edge with { Arc = "X5" })).Set;

        var patterns = set.Pieces.Where(piece => piece.Label[0] == 'D').Select(piece => piece.Pattern).ToArray();
        Assert.Equal(4, patterns.Distinct().Count());
        Assert.Equal(patterns[0], patterns[4]);
    }

    [Fact]
    public void Finish_Strip_IsAPieceLikeOthers()
    {
        var seam = MakeUp.Of(MakeUpForm.Plain, Jobs.Mm(15));
        AddedEdge Edge(string arc) => new(arc, IsSecond: true, EdgeRole.Seam, 15) { MakeUp = seam, Side = EdgeSide.Under };
        AddedEdge Raw(string arc) => new(arc, IsSecond: false, EdgeRole.Raw, 0);

        var strip = AddedPiece.Polygon("Z1", "canvas", PieceKind.Strip, [(new(0, 0), Edge("Y1")), (new(900, 0), Raw("X1")), (new(900, 60), Raw("X2")), (new(0, 60), Raw("X3"))]);
        var pattern = Finish(strip).Set.Patterns.Single(pattern => pattern.Kind == PieceKind.Strip);

        // By hand: 900 x 60 and 15 mm along one edge.
        Assert.Equal(900 * 75, Rings.SignedArea(pattern.CutLine), 0.001);
        Assert.Equal(900, pattern.Runs[0].LengthMm);
        Assert.NotEmpty(pattern.Notches);
    }

    [Fact]
    public void Finish_HoleTooLargeForItsPiece_IsAFault()
    {
        var bad = Ring("W1", "R001") with { Cutouts = [new AddedCutout("window", new AddedEdge("R001", IsSecond: true, EdgeRole.Rim, 12) { Radius = 340 })] };

        Assert.Contains(Finish(bad).Faults, fault => fault.Place == "windows" && fault.Allowed.StartsWith("Piece W1: the hole R001 reaches over the piece's edge", StringComparison.Ordinal));
    }

    private static double Circle(double radius) => Math.PI * radius * radius;

    private static AddedPiece Ring(string label, string rim) =>
        AddedPiece.Disc(label, "canvas", PieceKind.WindowRing, new AddedEdge("U" + rim[1..], IsSecond: false, EdgeRole.Turned, 12) { Radius = 335 }) with
        {
            Cutouts = [new AddedCutout("window", new AddedEdge(rim, IsSecond: true, EdgeRole.Rim, 12) { Radius = 300, Marks = Quarters })],
        };

    private static AddedPiece Disc(string label, double radius, AddedEdge edge) => AddedPiece.Disc(label, "clear", PieceKind.Pane, edge with { Radius = radius });

    private static PieceFinishing Finish(params AddedPiece[] added) => Finish(job => job, added);

    private static PieceFinishing Finish(Func<Job, Job> change, params AddedPiece[] added)
    {
        var dome = Jobs.Dome(2, 3, 2500);
        var job = change(dome with { Cloths = [.. dome.Cloths, dome.Cloths[0] with { Name = "clear", HasFace = false }] });
        var shell = Jobs.Shell(job);
        var cut = Subdivider.Cut(shell, SeamPlanner.Plan(job, shell, PanelPlan.SingleFacets(shell)));
        return PieceFinisher.Finish(job, shell, cut, PanelFlattener.Flatten(cut), [.. added]);
    }
}
