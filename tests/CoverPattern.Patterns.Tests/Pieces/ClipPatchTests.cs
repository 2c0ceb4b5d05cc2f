using System;
using System.Linq;
using CoverPattern.Geometry;
using CoverPattern.Patterns.Frames;
using CoverPattern.Patterns.Jobs;
using CoverPattern.Patterns.Pieces;

namespace CoverPattern.Patterns.Tests.Pieces;

/// <summary>Rows in three parts have inside corners; under each clip goes a patch that is cut.</summary>
public class ClipPatchTests
{
    [Fact]
    public void Finish_InsideCorners_EachClipHasItsPatch()
    {
        var set = Jobs.Pieces(Rows(3) with { Covers = 2 }).Finishing.Set;

        // By hand: rings 2 to 4 of the 3V 5/8 have five sector hubs each above rows 2 to 4; three cuts a row take none, one or more of them away.
        var patterns = set.Patterns.ToDictionary(pattern => pattern.Id, StringComparer.Ordinal);
        var clips = set.Pieces.Sum(piece => patterns[piece.Pattern].Lines.Count(line => line.Purpose == "clip"));
        var patches = set.Pieces.Where(piece => piece.Label.Contains("-clip", StringComparison.Ordinal)).ToArray();
        Assert.InRange(set.ClipPatches.Length, 5, 15);
        Assert.Equal((clips, clips), (patches.Length, 2 * set.ClipPatches.Length));
        Assert.All(patches, patch => Assert.Equal(PieceKind.Patch, patterns[patch.Pattern].Kind));
        Assert.All(set.ClipPatches, patch => Assert.Matches("^H[234][.][0-9]+$", patch.Hub));
    }

    [Fact]
    public void Finish_ClipPatch_ReachesBeyondTheClipAndIsDrawnOnItsPiece()
    {
        var set = Jobs.Pieces(Rows(3)).Finishing.Set;

        var patterns = set.Patterns.ToDictionary(pattern => pattern.Id, StringComparer.Ordinal);
        foreach (var patch in set.ClipPatches)
        {
            var pattern = patterns[set.Pieces.Single(piece => piece.Label == patch.Piece).Pattern];
            var cut = patterns[set.Pieces.Single(piece => piece.Label == patch.Label).Pattern];
            Assert.Equal(patch.RadiusMm, Rings.Bounds(cut.SewLine).High.X / 2, 0.03);

            // An allowance of 15 mm at a bend of b is clipped over 15 / cos(b / 2), 16.0 to 17.6 mm here (plane geometry), and 20 mm more are covered.
            Assert.InRange(patch.RadiusMm, 36, 38);
            var arcs = pattern.Lines.Where(line => line.Purpose == "clip patch").ToArray();
            Assert.Contains(arcs, arc => pattern.SewLine.Any(corner => arc.Path.All(point => Math.Abs(Point2.Distance(point, corner) - patch.RadiusMm) < 0.002)));
        }
    }

    [Fact]
    public void Finish_HubPatchAsLarge_ServesForTheClip()
    {
        var job = Rows(3) with { Marks = MarkWish.Bare with { HubPatches = HubPatchPlace.Inside, PatchDiameter = Jobs.Mm(180), ApexDiameter = Jobs.Mm(260) } };

        var set = Jobs.Pieces(job).Finishing.Set;

        Assert.Empty(set.ClipPatches);
        Assert.DoesNotContain(set.Patterns.SelectMany(pattern => pattern.Lines), line => line.Purpose == "clip patch");
    }

    [Fact]
    public void Finish_MirrorTwinsOnClothWithoutFace_PatchesNamedForTheirOwnHubs()
    {
        // Four facets round a hub leave two out: the hub is an inside corner. A second group is the first one's mirror image about the plane y = 0.
        var job = Jobs.Dome(3, 5, 3657.6);
        var frame = FrameBuilder.Build(job.Frame);
        var (hub, other) = (Hub(frame, "H1.03"), Hub(frame, "H0.03"));
        PanelWish Group(int at, int beside) => new(PanelForm.Group)
        {
            Facets = [.. frame.Facets.Where(facet => facet.Hubs.Contains(at) && !facet.Hubs.Contains(beside)).Select(facet => facet.Label)],
        };

        var twins = job with
        {
            Panels = [Group(hub, other), Group(Mirror(frame, hub), Mirror(frame, other)), new PanelWish(PanelForm.Facets)],
            Cloths = [job.Cloths[0] with { HasFace = false, RollWidth = Jobs.Mm(6000) }],
            Lay = job.Lay with { Turns = TurnRule.Free },
        };

        var set = Jobs.Pieces(twins).Finishing.Set;

        Assert.NotEqual(hub, Mirror(frame, hub));
        Assert.Contains(set.Pieces, piece => piece.Label == "K2" && piece.Mirrored);
        Assert.Equal([("K1", "H1.03"), ("K2", frame.Hubs[Mirror(frame, hub)].Label)], set.ClipPatches.Select(patch => (patch.Piece, patch.Hub)));
    }

    [Theory]
    [InlineData(4, 7, 187.3, 15)]
    [InlineData(6, 9, 191.6, 10)]
    [InlineData(8, 12, 193.5, 10)]
    public void Finish_RowsCutAtSectorEdges_FlatBendsThatAreLeftAreClippedAndToldForWeldsAlone(int frequency, int rows, double worst, int left)
    {
        // Pinned: below the upper five-strut hubs a ring has its bends in two or three sets of five, and the sector edges take one of them. Those left
        // are 13.5 degrees at most; a seam sewn in any way but in one run follows up to 30.
        var job = Rows(0, frequency, rows) with { Panels = [new PanelWish(PanelForm.Bands)] };
        var (plain, welded) = (Jobs.Pieces(job).Finishing, Jobs.Pieces(job with { Seam = SeamWish.Of(MakeUpForm.SplitWelded, Jobs.Mm(40)) }).Finishing);

        var bends = plain.Set.Pieces.SelectMany(piece => InsideCorner.Find(plain.Set.Patterns.Single(pattern => pattern.Id == piece.Pattern))).ToArray();
        Assert.Equal((left, worst), (bends.Length, Math.Round(bends.Max(bend => bend.InsideDegrees), 1)));
        Assert.Equal(left, plain.Set.ClipPatches.Length);
        Assert.DoesNotContain(plain.Notices, notice => notice.Code == "inside-corners");
        Assert.Equal(worst > 190, welded.Notices.Any(notice => notice.Code == "inside-corners"));
    }

    [Fact]
    public void Finish_SingleFacets_NoPatch() => Assert.Empty(Jobs.Pieces(Jobs.Dome(3, 5, 3657.6)).Finishing.Set.ClipPatches);

    [Theory]
    [InlineData(MakeUpForm.Plain, MakeUpForm.FolderFelled, SeamSet.Rows, 10)]
    [InlineData(MakeUpForm.Welded, MakeUpForm.Plain, SeamSet.Rows, 30)]
    [InlineData(MakeUpForm.Plain, MakeUpForm.Welded, SeamSet.Uprights, 30)]
    [InlineData(MakeUpForm.FolderFelled, MakeUpForm.Lapped, SeamSet.Uprights, 10)]
    public void Finish_RowsMadeOtherwise_LimitIsThatOfTheSeamThatBends(MakeUpForm main, MakeUpForm other, SeamSet set, int limit)
    {
        // Inside corners of rows lie between two seams along the ring: the uprights' make-up has no say in them.
        var job = Rows(3, frequency: 4, rows: 7);
        var mixed = job with { Seam = new SeamWish(MakeUp.Of(main, Jobs.Mm(15))) { Others = [new SeamChoice(set, [], MakeUp.Of(other, Jobs.Mm(15)))] } };

        var notice = Assert.Single(Jobs.Pieces(mixed).Finishing.Notices, notice => notice.Code == "inside-corners");

        Assert.Contains(FormattableString.Invariant($"bend by more than {limit} degrees"), notice.Text, StringComparison.Ordinal);
        Assert.DoesNotContain(FormattableString.Invariant($"more than {40 - limit} degrees"), notice.Text, StringComparison.Ordinal);
    }

    private static Job Rows(int parts, int frequency = 3, int rows = 5)
    {
        var job = Jobs.Dome(frequency, rows, frequency > 4 ? 9000 : 3657.6, standOff: 0);
        return job with { Panels = [new PanelWish(PanelForm.Bands) { Parts = parts }], Cloths = [job.Cloths[0] with { RollWidth = Jobs.Mm(20_000) }] };
    }

    private static int Hub(Frame frame, string label) => Enumerable.Range(0, frame.Hubs.Length).Single(hub => frame.Hubs[hub].Label == label);

    private static int Mirror(Frame frame, int hub) => Enumerable.Range(0, frame.Hubs.Length)
        .MinBy(other => Point3.Distance(frame.Hubs[other].Position, frame.Hubs[hub].Position with { Y = -frame.Hubs[hub].Position.Y }));
}
