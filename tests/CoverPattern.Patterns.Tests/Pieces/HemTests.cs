using System;
using System.Collections.Immutable;
using System.Linq;
using CoverPattern.Geometry;
using CoverPattern.Patterns.Jobs;
using CoverPattern.Patterns.Pieces;
using CoverPattern.Patterns.Seams;
using NetTopologySuite.Geometries;

namespace CoverPattern.Patterns.Tests.Pieces;

public class HemTests
{
    private static readonly HemFixings At500 = new(Jobs.Mm(500), Jobs.Mm(25));

    [Theory]
    // Three bays of 503 mm pass at 500 (own calculation); 3 x 515 = 1545 is the last length that takes three.
    [InlineData(1508.436, 500, 3)]
    [InlineData(1545, 500, 3)]
    [InlineData(1545.1, 500, 4)]
    [InlineData(400, 500, 1)]
    [InlineData(5.4, 500, 0)]
    [InlineData(1508.436, 300, 5)]
    public void Bays_Length_AreAsFewAsTheSpacingLets(double length, double spacing, int bays) =>
        Assert.Equal(bays, HemMarks.Bays(length, new HemFixings(Jobs.Mm(spacing), Jobs.Mm(25))));

    [Theory]
    [InlineData(SkirtShape.Vertical)]
    [InlineData(SkirtShape.Slope)]
    [InlineData(SkirtShape.Chords)]
    public void Fixings_At500_AreDrawnOnBothPiecesAtEveryHub(SkirtShape shape)
    {
        var job = Hem(shape, hem => hem with { Fixings = At500 });
        var (shell, cut, finishing) = Jobs.Pieces(job);
        var patterns = finishing.Set.Patterns.ToDictionary(pattern => pattern.Id);

        // Where a drawn point lies on a seam, and how far from the seam's lower end.
        var onSeams = finishing.Set.Pieces.SelectMany(piece =>
            from drill in patterns[piece.Pattern].Drills
            from run in Enumerable.Range(0, piece.Runs.Length)
            let pattern = patterns[piece.Pattern]
            let ends = (From: pattern.SewLine[pattern.Runs[run].From], To: pattern.SewLine[pattern.Runs[run].To])
            where pattern.Runs[run].Role == EdgeRole.Seam && Segments.Distance(ends.From, ends.To, drill.At) < 0.002
            select (piece.Runs[run].Arc, Up: Math.Min(Point2.Distance(ends.From, drill.At), Point2.Distance(ends.To, drill.At)))).ToArray();

        Assert.Equal(15, onSeams.DistinctBy(mark => mark.Arc).Count());
        Assert.All(onSeams.GroupBy(mark => mark.Arc), marks => Assert.Equal(2, marks.Count()));
        Assert.All(onSeams, mark => Assert.Equal(25, mark.Up, 0.002));
        Assert.Equal(45, HemCount.Of(job.Hem, cut).Fixings);
        // Two for every chord between hubs beside two at its ends.
        Assert.Equal(15 * 4, finishing.Set.Pieces.Sum(piece => patterns[piece.Pattern].Drills.Length));
        Assert.All(patterns.Values.SelectMany(pattern => pattern.Drills), drill => Assert.Equal("fixing", drill.Purpose));
    }

    [Fact]
    public void Fixings_BetweenHubs_StandEvenlyAtTheirHeight()
    {
        var pattern = Jobs.Pieces(Hem(SkirtShape.Vertical, hem => hem with { Fixings = At500 })).Finishing.Set.Patterns.First(one => one.Drills.Length > 0);
        var hem = pattern.Runs.Single(run => run.Role == EdgeRole.Hem);
        var (from, along) = (pattern.SewLine[hem.From], (pattern.SewLine[hem.To] - pattern.SewLine[hem.From]).Unit());

        var places = pattern.Drills.Select(drill => (X: Point2.Dot(drill.At - from, along), Y: Point2.Cross(along, drill.At - from))).OrderBy(place => place.X).ToArray();

        Assert.Equal(4, places.Length);
        Assert.All(places.Select((place, i) => (place, i)), entry =>
        {
            Assert.Equal(hem.LengthMm * entry.i / 3, entry.place.X, 0.01);
            Assert.Equal(25, entry.place.Y, 0.01);
        });
    }

    [Fact]
    public void Fixings_InTheSharpTipsOfFacets_StayOnThePiece()
    {
        // Facets of a 7V at stand-off 0 end on the sloping hem in tips that are lower than the points 20 mm above the edge.
        var job = Hem(SkirtShape.Slope, hem => hem with { Fixings = new HemFixings(Jobs.Mm(400), Jobs.Mm(20)) });
        job = job with
        {
            Frame = new FrameWish(FrameFamily.Icosahedron, 7, 13, "13", FrameMeasure.Radius, Jobs.Mm(6931)),
            Skirt = new SkirtWish(Jobs.Mm(0), SkirtShape.Slope),
            StandOff = new StandOffWish(Jobs.Mm(0), Jobs.Mm(0), Jobs.Mm(0)),
        };

        var patterns = Jobs.Pieces(job).Finishing.Set.Patterns;

        var fixings = patterns.SelectMany(pattern => pattern.Drills.Where(drill => drill.Purpose == "fixing").Select(drill => (pattern, drill.At))).ToArray();
        Assert.NotEmpty(fixings);
        Assert.All(fixings, entry => Assert.True(IsOn(entry.pattern.SewLine, entry.At), $"{entry.pattern.Id} {entry.At}"));

        // On a seam two grid steps aside are on it.
        static bool IsOn(ImmutableArray<Point2> ring, Point2 at) => ExactPredicates.Locate(Rings.ToSteps(ring), Grid.ToSteps(at)) >= 0
            || ring.Select((corner, i) => Segments.Distance(corner, ring[(i + 1) % ring.Length], at)).Min() <= 0.002;
    }

    [Fact]
    public void HemCheck_HubOnTheEdge_SaysThatNothingIsDrawnThere()
    {
        // At stand-off 0 and drop 0 five low hubs stand on the finished edge.
        var job = Hem(SkirtShape.Vertical, hem => hem with { Fixings = At500 });
        job = job with { Skirt = new SkirtWish(Jobs.Mm(0)), StandOff = new StandOffWish(Jobs.Mm(0), Jobs.Mm(0), Jobs.Mm(0)) };
        var (shell, cut, _) = Jobs.Pieces(job);

        var notices = HemCheck.Check(job, shell, cut);

        Assert.StartsWith("At 5 base hubs", notices.Single(notice => notice.Code == "fixings-at-bare-hubs").Text, StringComparison.Ordinal);
        Assert.Contains("45 points", notices.Single(notice => notice.Code == "hem-fixings").Text, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData(SkirtShape.Vertical, CornerStyle.Mitred)]
    [InlineData(SkirtShape.Slope, CornerStyle.Mitred)]
    [InlineData(SkirtShape.Vertical, CornerStyle.Squared)]
    [InlineData(SkirtShape.Vertical, CornerStyle.Trimmed)]
    [InlineData(SkirtShape.Chords, CornerStyle.Trimmed)]
    public void Fitting_CutLine_RunsOnStraightBelowTheFinishLine(SkirtShape shape, CornerStyle corners)
    {
        // Corner styles are for seams: a hem keeps its whole length whatever they are.
        var job = Hem(shape, hem => hem with { Fitting = Jobs.Mm(50) });
        var set = Jobs.Pieces(job with { Seam = job.Seam with { Corners = corners } }).Finishing.Set;
        var hemmed = set.Patterns.Where(pattern => pattern.Runs.Any(run => run.Role == EdgeRole.Hem)).ToArray();

        Assert.NotEmpty(hemmed);
        foreach (var pattern in hemmed)
        {
            var i = pattern.Runs.ToList().FindIndex(run => run.Role == EdgeRole.Hem);
            var (hem, side) = (pattern.Runs[i], pattern.Runs[(i + 1) % pattern.Runs.Length]);
            var (from, to) = (pattern.SewLine[hem.From], pattern.SewLine[hem.To]);
            // 38 + 12 folded, 50 to be trimmed; the finish line is the hem's sew line.
            Assert.Equal(100, hem.AllowanceMm);
            Assert.Equal(100, pattern.CutLine.Max(point => Lines.Distance(from, to, point) * Math.Sign(Point2.Cross(point - from, to - from))), 0.002);
            Assert.Equal("finish line", pattern.Lines.Single().Purpose);
            Assert.Equal([from, to], pattern.Lines.Single().Path.AsEnumerable());
            // The side's cut line is prolonged: its line holds the lowest corner of the cut line at this end.
            var along = (pattern.SewLine[side.To] - to).Unit();
            var outer = to - (15 * along.QuarterTurned());
            Assert.Contains(pattern.CutLine, point => Math.Abs(Point2.Cross(along, point - outer)) < 0.003 && Math.Abs(Lines.Distance(from, to, point) - 100) < 0.003);
        }
    }

    [Fact]
    public void Sleeve_WithinTheGap_HasNoCloth()
    {
        var job = Hem(SkirtShape.Vertical, hem => hem with { Kind = HemKind.Sleeve, Depth = Jobs.Mm(64), Pipe = Jobs.Mm(34), Gap = Jobs.Mm(100) });
        var (shell, cut, finishing) = Jobs.Pieces(job);

        var hemmed = finishing.Set.Patterns.Where(pattern => pattern.Runs.Any(run => run.Role == EdgeRole.Hem)).ToArray();
        foreach (var pattern in hemmed)
        {
            var hem = pattern.Runs.Single(run => run.Role == EdgeRole.Hem);
            var (from, along) = (pattern.SewLine[hem.From], (pattern.SewLine[hem.To] - pattern.SewLine[hem.From]).Unit());
            var below = pattern.CutLine.Select(point => (X: Point2.Dot(point - from, along), Y: -Point2.Cross(along, point - from))).Where(place => place.Y > 0.01).ToArray();
            Assert.Equal(2, below.Length);
            Assert.All(below, place => Assert.Equal(76, place.Y, 0.002));
            Assert.Equal([100, hem.LengthMm - 100], below.Select(place => place.X).Order(), (wanted, found) => Math.Abs(wanted - found) < 0.003);
        }

        Assert.Empty(finishing.Faults);
        // Fifteen chords, each without twice 100 mm.
        Assert.Equal(cut.Arcs.Where(arc => arc.Role == EdgeRole.Hem).Sum(arc => arc.LengthMm) - 3000, HemCount.Of(job.Hem, cut).SleeveMm, 1e-6);
        Assert.Equal((3000.0, 15), (Math.Round(HemCount.Of(job.Hem, cut).BoundMm, 6), HemCount.Of(job.Hem, cut).Gaps));
        Assert.Contains(HemCheck.Check(job, shell, cut), notice => notice.Code == "hem-broken-at-hubs" && notice.Text.Contains("15 lengths of 200 mm on one cover, 3.00 m in all", StringComparison.Ordinal));
    }

    [Fact]
    public void Sleeve_GapsThatMeet_AreAFault()
    {
        var job = Hem(SkirtShape.Vertical, hem => hem with { Kind = HemKind.Sleeve, Depth = Jobs.Mm(64), Pipe = Jobs.Mm(34), Gap = Jobs.Mm(760) });

        Assert.Contains(Jobs.Pieces(job).Finishing.Faults, fault => fault.Place == "hem.gap");
    }

    [Theory]
    [InlineData(HemKind.Webbing)]
    [InlineData(HemKind.Strip)]
    [InlineData(HemKind.Turned)]
    public void HemCount_Kind_MeasuresWhatLiesInIt(HemKind kind)
    {
        var job = Hem(SkirtShape.Vertical, hem => hem with { Kind = kind });
        var (_, cut, _) = Jobs.Pieces(job);

        var count = HemCount.Of(job.Hem, cut);

        // 22 611.11 mm of hem at 25 mm without ease (own calculation).
        Assert.Equal(kind == HemKind.Webbing ? 22_611.11 : 0, count.WebbingMm, 0.005);
        Assert.Equal(kind == HemKind.Strip ? 22_611.11 : 0, count.StripMm, 0.005);
        Assert.Equal((0, 0.0), (count.Fixings, count.SleeveMm));
    }

    [Theory]
    [InlineData(SkirtShape.Slope, 60)]
    [InlineData(SkirtShape.Slope, 0)]
    [InlineData(SkirtShape.Chords, 60)]
    public void CutLine_HemOfAnyShape_FoldsBackOntoThePiece(SkirtShape shape, double drop)
    {
        // Folding on paper, as for the vertical skirt (CutLineTests).
        var set = Jobs.Pieces(Jobs.Dome(3, 5, 2500) with { Skirt = new SkirtWish(Jobs.Mm(drop), shape), Deck = new DeckWish(DeckDatum.Lowest) { Raise = Jobs.Mm(30) } }).Finishing.Set;
        foreach (var pattern in set.Patterns)
        {
            var outline = Polygon(pattern.CutLine).Buffer(0.01);
            foreach (var run in pattern.Runs.Where(run => run.Role == EdgeRole.Hem && run.LengthMm > 100))
            {
                var (from, to) = (pattern.SewLine[run.From], pattern.SewLine[run.To]);
                var inward = (to - from).Unit().QuarterTurned();
                foreach (var point in pattern.CutLine.Where(point => Point2.Dot(point - from, inward) < -0.01))
                {
                    var below = -Point2.Dot(point - from, inward);
                    var lies = point + ((below + (below <= 38.001 ? below : 76 - below)) * inward);
                    Assert.True(outline.Covers(new Point(lies.X, lies.Y)), FormattableString.Invariant($"{pattern.Id}: {point} folds to {lies}"));
                }
            }
        }
    }

    private static Job Hem(SkirtShape shape, Func<HemWish, HemWish> change)
    {
        var job = Jobs.Dome(3, 5, 3657.6);
        return job with { Skirt = job.Skirt with { Shape = shape }, Hem = change(job.Hem) };
    }

    private static Polygon Polygon(ImmutableArray<Point2> ring) =>
        new(new LinearRing([.. ring.Append(ring[0]).Select(point => new Coordinate(point.X, point.Y))]));
}
