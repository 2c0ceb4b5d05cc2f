using System;
using System.Collections.Generic;
using System.Linq;
using CoverPattern.Geometry;
using CoverPattern.Patterns.Frames;
using CoverPattern.Patterns.Jobs;
using CoverPattern.Patterns.Pieces;

namespace CoverPattern.Patterns.Tests.Pieces;

/// <summary>Rows joined hub to hub, each in three parts: most of the hubs at sector edges lie within a part.</summary>
public class InsideCornerTests
{
    /// <summary>Interior angles of the lower panel at the ring hubs: own calculation of the check tables, part 8b (3V 182.1 is under 5 degrees).</summary>
    [Theory]
    [InlineData(2, 3, new[] { 206.6, 231.1 })]
    [InlineData(3, 5, new[] { 212.2, 230.7, 242.8 })]
    [InlineData(4, 7, new[] { 187.3, 214.0, 228.5, 240.2, 247.2 })]
    public void Find_RowsHubToHub_InsideCornersAsTabled(int frequency, int rows, double[] tabled)
    {
        var set = Rows(Dome(frequency, rows)).Set;

        var angles = set.Patterns.SelectMany(pattern => InsideCorner.Find(pattern)).Select(corner => Math.Round(corner.InsideDegrees, 1)).Distinct().Order();
        Assert.Equal(tabled, angles);
    }

    [Theory]
    [InlineData(MakeUpForm.Plain)]
    [InlineData(MakeUpForm.Felled)]
    [InlineData(MakeUpForm.Welded)]
    public void Finish_InsideCorner_HasPivotAndClipShortOfTheSewLine(MakeUpForm form)
    {
        var set = Rows(Dome(3, 5) with { Seam = SeamWish.Of(form, Jobs.Mm(15)) }).Set;

        var marked = 0;
        foreach (var pattern in set.Patterns)
        {
            var sew = Rings.ToSteps(pattern.SewLine);
            foreach (var corner in InsideCorner.Find(pattern))
            {
                Assert.Single(pattern.Drills, drill => drill.At == corner.At && drill.Purpose == "pivot");
                var clips = pattern.Lines.Where(line => line.Purpose == "clip" && Point2.Distance(line.Path[1], corner.At) < 2.01).ToArray();
                var allowances = new[] { pattern.Runs[corner.Run], pattern.Runs[(corner.Run + pattern.Runs.Length - 1) % pattern.Runs.Length] }.Select(run => run.AllowanceMm);
                Assert.Equal(allowances.Max() > 4 ? 1 : 0, clips.Length);
                foreach (var clip in clips)
                {
                    // 2 mm short of the sew line, begun at the cut line, outside the finished piece all the way.
                    Assert.Equal(2, Point2.Distance(clip.Path[1], corner.At), 0.002);
                    Assert.True(Enumerable.Range(0, pattern.CutLine.Length).Min(i => Segments.Distance(pattern.CutLine[i], pattern.CutLine[(i + 1) % pattern.CutLine.Length], clip.Path[0])) < 0.002);
                    Assert.All(new[] { 0, 0.5, 1 }, share => Assert.True(ExactPredicates.Locate(sew, Grid.ToSteps(Point2.Between(clip.Path[0], clip.Path[1], share))) < 0));
                    marked++;
                }
            }
        }

        Assert.True(marked > 0);
    }

    [Theory]
    [InlineData(MakeUpForm.Plain, 30)]
    [InlineData(MakeUpForm.Felled, 30)]
    [InlineData(MakeUpForm.FolderFelled, 10)]
    [InlineData(MakeUpForm.Welded, 10)]
    public void Finish_InsideCorner_IsToldOverTheLimitOfItsMakeUp(MakeUpForm form, double limit)
    {
        var finishing = Rows(Dome(4, 7) with { Seam = SeamWish.Of(form, Jobs.Mm(15)) });

        // Of 187.3, 214.0 and steeper ones only those over the limit are told; the worst is 247.2.
        var notice = Assert.Single(finishing.Notices, notice => notice.Code == "inside-corners");
        var over = finishing.Set.Pieces.Sum(piece => InsideCorner.Find(finishing.Set.Patterns.Single(pattern => pattern.Id == piece.Pattern)).Count(corner => corner.InsideDegrees > 180 + limit));
        Assert.Contains("67.2 degrees", notice.Text, StringComparison.Ordinal);
        Assert.Contains(FormattableString.Invariant($"{over} corners of one cover bend by more than {limit:0} degrees"), notice.Text, StringComparison.Ordinal);
        Assert.Contains("Cut the row", notice.Text, StringComparison.Ordinal);
    }

    [Fact]
    public void Finish_InsideCornersOnManyPieces_AFewAreNamedWithoutTheirCover()
    {
        var job = Dome(4, 7);
        var set = Rows(job).Set;
        var one = Told(job);
        string[] bent = [.. set.Patterns.Where(pattern => InsideCorner.Find(pattern).Any(corner => corner.InsideDegrees > 210)).Select(pattern => pattern.Id)];
        string[] pieces = [.. set.Pieces.Where(piece => bent.Contains(piece.Pattern)).Select(piece => piece.Label)];

        // Covers are equal: two of them tell the same but for the piece that is named first.
        Assert.True(pieces.Length > 5);
        Assert.Contains($"on {string.Join(", ", pieces.Take(4))} and {pieces.Length - 4} more. Cut the row", one, StringComparison.Ordinal);
        Assert.Equal(one.Replace("Piece ", "Piece C1 ", StringComparison.Ordinal), Told(job with { Covers = 2 }));
    }

    [Fact]
    public void Finish_OneInsideCorner_IsToldAsOne()
    {
        // Four of the six facets round a hub, one after the other: the two that are left let the edge of the group bend there alone.
        var job = Jobs.Dome(3, 5, 3657.6, standOff: 0);
        var frame = FrameBuilder.Build(job.Frame);
        var hub = Enumerable.Range(0, frame.Hubs.Length).Single(one => frame.Hubs[one].Label == "H2.02");
        var round = frame.Facets.Where(facet => facet.Hubs.Contains(hub)).ToList();
        List<Facet> group = [round[0]];
        while (group.Count < round.Count - 2)
        {
            group.Add(round.First(facet => !group.Contains(facet) && facet.Hubs.Intersect(group[^1].Hubs).Count() == 2));
        }

        var single = job with
        {
            Panels = [new PanelWish(PanelForm.Group) { Name = "corner", Facets = [.. group.Select(facet => facet.Label)] }, new PanelWish(PanelForm.Facets)],
            Cloths = [job.Cloths[0] with { RollWidth = Jobs.Mm(6000) }],
        };

        Assert.Contains("; 1 corner of one cover bends by more than 30 degrees, the most that a plain seam follows, on corner. Cut the row or group", Told(single), StringComparison.Ordinal);
    }

    private static string Told(Job job) => Assert.Single(Rows(job).Notices, notice => notice.Code == "inside-corners").Text;

    [Fact]
    public void Finish_SingleFacets_HaveNoInsideCorner()
    {
        var finishing = Jobs.Pieces(Jobs.Dome(3, 5, 3657.6)).Finishing;

        Assert.All(finishing.Set.Patterns, pattern => Assert.Empty(InsideCorner.Find(pattern)));
        Assert.Empty(finishing.Notices);
    }

    private static Job Dome(int frequency, int rows)
    {
        // At stand-off 0: the tabled angles are the frame's.
        var job = Jobs.Dome(frequency, rows, 3657.6, standOff: 0);
        return job with
        {
            Panels = [new PanelWish(PanelForm.Bands) { Parts = 3 }],
            Cloths = [job.Cloths[0] with { RollWidth = Jobs.Mm(6000) }],
        };
    }

    private static PieceFinishing Rows(Job job) => Jobs.Pieces(job).Finishing;
}
