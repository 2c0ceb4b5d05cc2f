using System;
using System.Collections.Generic;
using System.Collections.Immutable;
using System.Linq;
using CoverPattern.Files.Tests.Reports;
using CoverPattern.Geometry;
using CoverPattern.Patterns.Frames;
using CoverPattern.Patterns.Jobs;
using CoverPattern.Patterns.Pieces;
using CoverPattern.Patterns.Seams;
using CoverPattern.Patterns.Shells;

namespace CoverPattern.Files.Tests.Surveys;

public class RandomSurveyTests
{
    [Theory]
    [InlineData(1)]
    [InlineData(2)]
    [InlineData(3)]
    [InlineData(4)]
    [InlineData(5)]
    public void Make_ConvexCapOfRandomPoints_Closes(int seed)
    {
        var random = new Random(seed);
        var points = new List<Point3>();
        while (points.Count < 20)
        {
            var point = 2500 * new Point3(random.NextDouble() - 0.5, random.NextDouble() - 0.5, 0.9 * random.NextDouble()).Unit();
            if (points.All(other => Point3.Distance(point, other) > 600))
            {
                points.Add(point);
            }
        }

        // Narrow allowances: chance makes slender facets that could not take wide ones.
        var job = Covers.Over(Survey([.. points], UpperHull([.. points]))) with
        {
            Seam = SeamWish.Of(MakeUpForm.Plain, ReportResults.Mm(3)),
            Hem = new HemWish(ReportResults.Mm(6), ReportResults.Mm(0)),
        };
        var cover = Covers.Make(job);

        AssertCloses(cover);
    }

    [Theory]
    [InlineData(2, 3, 11)]
    [InlineData(3, 5, 12)]
    [InlineData(4, 6, 13)]
    public void Make_NoisyDome_Closes(int frequency, int rows, int seed)
    {
        var random = new Random(seed);
        var frame = FrameBuilder.Build(ReportResults.Dome(frequency, rows).Frame);
        double Noise() => 40 * ((2 * random.NextDouble()) - 1);
        var points = frame.Hubs.Select(hub => hub.Position + new Point3(Noise(), Noise(), Noise())).ToArray();

        var cover = Covers.Make(Covers.Over(Survey(points, frame.Facets.Select(facet => facet.Hubs))));

        Assert.Equal(frame.Facets.Length, cover.Pieces.Pieces.Length);
        AssertCloses(cover);
    }

    [Fact]
    public void Make_TwoFacetsJoinedToOneBentQuadrangle_AreOnePieceWithAFold()
    {
        var frame = FrameBuilder.Build(ReportResults.Dome(3, 5).Frame);
        var strut = frame.Struts.First(strut => frame.Facets.Count(facet => facet.Hubs.Contains(strut.From) && facet.Hubs.Contains(strut.To)) == 2);
        var pair = frame.Facets.Where(facet => facet.Hubs.Contains(strut.From) && facet.Hubs.Contains(strut.To)).Select(facet => facet.Hubs).ToArray();
        var tips = pair.Select(facet => facet.Single(hub => hub != strut.From && hub != strut.To)).ToArray();
        ImmutableArray<int> quadrangle = [strut.From, tips[0], strut.To, tips[1]];
        var facets = frame.Facets.Select(facet => facet.Hubs).Except(pair).Append(quadrangle);

        var cover = Covers.Make(Covers.Over(Survey([.. frame.Hubs.Select(hub => hub.Position)], facets)));

        // Round the piece's foot the skirt makes inside corners: what else is cut are the patches under their clips.
        Assert.Equal(frame.Facets.Length - 1, cover.Pieces.Pieces.Count(piece => !piece.Label.EndsWith("-clip", StringComparison.Ordinal)));
        Assert.Equal(frame.Struts.Length - 1, cover.Frame.Struts.Length);
        Assert.Single(cover.Frame.Folds);
        AssertCloses(cover);
    }

    [Fact]
    public void Make_FacetLeftOut_IsAnOpeningWithoutSkirt()
    {
        var frame = FrameBuilder.Build(ReportResults.Dome(3, 5).Frame);
        var open = frame.Facets.First(facet => facet.Row == 3);

        var cover = Covers.Make(Covers.Over(Survey([.. frame.Hubs.Select(hub => hub.Position)], frame.Facets.Where(facet => facet != open).Select(facet => facet.Hubs))));

        Assert.Equal(3, Assert.Single(cover.Frame.Openings).Length);
        Assert.Equal(15, cover.Frame.Base.Length);
        Assert.Equal(15, cover.Shell.Faces.Count(face => face.Kind == FaceKind.Skirt));
        Assert.Empty(SubdivisionCheck.Check(cover.Shell, cover.Cut));
        var job = Covers.Over(Survey([.. frame.Hubs.Select(hub => hub.Position)], frame.Facets.Where(facet => facet != open).Select(facet => facet.Hubs)));
        var told = Assert.Single(ShellCheck.Check(job, cover.Frame, cover.Shell), notice => notice.Code == "left-open");
        var girth = open.Hubs.Select((hub, i) => Point3.Distance(frame.Hubs[hub].Position, frame.Hubs[open.Hubs[(i + 1) % 3]].Position)).Sum();
        Assert.Contains(FormattableString.Invariant($"a place {girth:0} mm round"), told.Text, StringComparison.Ordinal);
        AssertCloses(cover);
    }

    [Fact]
    public void Check_DoorLeftOutAtTheBase_IsWarnedOfWithTheWayOut()
    {
        var frame = FrameBuilder.Build(ReportResults.Dome(3, 5).Frame);
        ImmutableArray<Point3> hubs = [.. frame.Hubs.Select(hub => hub.Position)];
        Notice Raised(IEnumerable<ImmutableArray<int>> facets)
        {
            var job = Covers.Over(Survey([.. hubs], facets));
            var surveyed = FrameBuilder.Build(job.Frame);
            return ShellCheck.Check(job, surveyed, ShellFitter.Fit(job, surveyed)).Single(notice => notice.Code == "raised-base-hubs");
        }

        var whole = Raised(frame.Facets.Select(facet => facet.Hubs));
        var open = Raised(frame.Facets.Where(facet => facet.Label is not ("F1.07" or "F1.08")).Select(facet => facet.Hubs));

        Assert.Equal(NoticeLevel.Note, whole.Level);
        Assert.Equal(NoticeLevel.Warning, open.Level);
        Assert.Contains("place a door there", open.Text, StringComparison.Ordinal);
        Assert.DoesNotContain("door", whole.Text, StringComparison.Ordinal);
    }

    [Fact]
    public void Make_FlatRoofedHutOfQuadrangles_KeepsPlaneFacetsWhole()
    {
        // A truncated pyramid: four walls and a roof, all plane; own example.
        Point3[] points = [new(-1500, -1500, 0), new(1500, -1500, 0), new(1500, 1500, 0), new(-1500, 1500, 0), new(-800, -800, 2000), new(800, -800, 2000), new(800, 800, 2000), new(-800, 800, 2000)];
        ImmutableArray<int>[] facets = [[0, 1, 5, 4], [1, 2, 6, 5], [3, 2, 6, 7], [0, 4, 7, 3], [4, 5, 6, 7]];

        var cover = Covers.Make(Covers.Over(Survey(points, facets)));

        Assert.Equal([4, 1], cover.Pieces.Patterns.Select(pattern => pattern.Quantity).OrderDescending());
        Assert.Empty(cover.Frame.Folds);
        AssertCloses(cover);
    }

    /// <summary>Partner edges are equally long, facets lie as they are in space, and nothing is lost or doubled.</summary>
    private static void AssertCloses((Frame Frame, Shell Shell, Subdivision Cut, PieceSet Pieces) cover)
    {
        var patterns = cover.Pieces.Patterns.ToDictionary(pattern => pattern.Id);
        var pieces = cover.Pieces.Pieces.ToDictionary(piece => piece.Label);
        foreach (var piece in cover.Pieces.Pieces)
        {
            foreach (var (run, i) in piece.Runs.Select((run, i) => (run, i)).Where(pair => pair.run.Partner is not null))
            {
                var other = pieces[run.Partner!.Piece];
                Assert.Equal(piece.Label, other.Runs[run.Partner.Run].Partner!.Piece);
                Assert.Equal(Length(patterns[piece.Pattern], i), Length(patterns[other.Pattern], run.Partner.Run), 0.01);
            }
        }

        var faces = cover.Shell.Faces.Where(face => face.Kind == FaceKind.Facet).ToArray();
        var above = faces.Where(face => face.Nodes.All(node => cover.Shell.Nodes[node].AboveHem > 0)).ToDictionary(face => face.Label);
        foreach (var (label, ring) in cover.Pieces.Pieces.SelectMany(piece => piece.Facets.Zip(patterns[piece.Pattern].Facets)).Where(pair => above.ContainsKey(pair.First)))
        {
            var corners = above[label].Nodes.Select(node => cover.Shell.Nodes[node].Position).ToArray();
            Assert.Equal(Sides(corners.Length, (i, j) => Point3.Distance(corners[i], corners[j])), Sides(ring.Length, (i, j) => Point2.Distance(ring[i], ring[j])), (a, b) => Math.Abs(a - b) < 0.01);
        }

        Assert.Equal(faces.Length, cover.Pieces.Pieces.SelectMany(piece => piece.Facets).Count(label => !label.EndsWith('k')));
    }

    private static double[] Sides(int count, Func<int, int, double> length) => [.. Enumerable.Range(0, count).Select(i => length(i, (i + 1) % count)).Order()];

    private static double Length(Pattern pattern, int run) => pattern.Runs[run].LengthMm;

    private static FrameSurvey Survey(Point3[] points, IEnumerable<ImmutableArray<int>> facets) => new(
        "",
        [.. points.Select((point, i) => new SurveyHub("", point, $"corner {i + 1}"))],
        [.. facets.Select((facet, i) => new SurveyFacet(facet, $"face {i + 1}"))],
        [])
    { WeldMm = 0.1 };

    /// <summary>Triangles that no point lies above.</summary>
    private static IEnumerable<ImmutableArray<int>> UpperHull(Point3[] points) =>
        from i in Enumerable.Range(0, points.Length)
        from j in Enumerable.Range(i + 1, points.Length - i - 1)
        from k in Enumerable.Range(j + 1, points.Length - j - 1)
        let across = Point3.Cross(points[j] - points[i], points[k] - points[i])
        let normal = across.Z > 0 ? across : -1 * across
        where points.All(point => Point3.Dot(normal, point - points[i]) < 1e-3 * normal.Length)
        select ImmutableArray.Create(i, j, k);
}
