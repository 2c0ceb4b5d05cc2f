using System;
using System.Linq;
using CoverPattern.Geometry;
using CoverPattern.Patterns.Jobs;
using CoverPattern.Patterns.Pieces;

namespace CoverPattern.Patterns.Tests.Pieces;

/// <summary>Only where the job asks, and only under a patch or in an allowance, a mark is pierced.</summary>
public class PiercingTests
{
    private static readonly MarkWish Patched = new(TieRule.Usual, Jobs.Mm(80), HubPatchPlace.Outside, Jobs.Mm(180), Jobs.Mm(260));

    [Fact]
    public void Finish_NotAsked_NothingIsPierced()
    {
        var finishing = Jobs.Pieces(Rows() with { Marks = Patched }).Finishing;

        Assert.DoesNotContain(finishing.Set.Patterns.SelectMany(pattern => pattern.Drills), drill => drill.IsPierced);
        Assert.DoesNotContain(finishing.Notices, notice => notice.Code.StartsWith("marks-", StringComparison.Ordinal));
    }

    [Fact]
    public void Finish_Asked_WhatIsPiercedLiesUnderAPatch()
    {
        var finishing = Jobs.Pieces(Rows() with { Marks = Patched with { Pierce = true } }).Finishing;

        // Patches have radii of 90 mm, 130 at the top, less at the base (45): a tie 80 mm from a hub is covered by 10 mm where there is the whole patch.
        var drills = finishing.Set.Patterns.SelectMany(pattern => pattern.Drills.Select(drill => (pattern, drill))).ToArray();
        Assert.Contains(drills, mark => mark.drill is { Purpose: "tie", IsPierced: true });
        Assert.Contains(drills, mark => mark.drill is { Purpose: "pivot", IsPierced: true });
        Assert.All(drills.Where(mark => mark.drill.IsPierced), mark => Assert.Contains(
            mark.pattern.Lines.Where(line => line.Purpose == "patch"),
            arc => mark.pattern.SewLine.Any(hub => Math.Abs(Point2.Distance(hub, arc.Path[0]) - Point2.Distance(hub, arc.Path[^1])) < 0.01
                && Point2.Distance(hub, mark.drill.At) < Point2.Distance(hub, arc.Path[0]) - 6)));
        Assert.Contains(finishing.Notices, notice => notice.Code == "marks-pierced" && notice.Text.Contains("marks \"pivot\"", StringComparison.Ordinal));
    }

    [Fact]
    public void Finish_AskedWithoutPatches_TiesAreDrawnAndTold()
    {
        var finishing = Jobs.Pieces(Rows() with { Covers = 2, Marks = new MarkWish(TieRule.Every, Jobs.Mm(80), HubPatchPlace.None, default, default) { Pierce = true } }).Finishing;

        var patterns = finishing.Set.Patterns.ToDictionary(pattern => pattern.Id, StringComparer.Ordinal);
        Assert.DoesNotContain(patterns.Values.SelectMany(pattern => pattern.Drills), drill => drill is { Purpose: "tie", IsPierced: true });

        // Pivots lie under the patch of their clip, 36 mm and more round them.
        Assert.All(patterns.Values.SelectMany(pattern => pattern.Drills).Where(drill => drill.Purpose == "pivot"), drill => Assert.True(drill.IsPierced));
        var ties = finishing.Set.Pieces.Where(piece => piece.Label.StartsWith("C1", StringComparison.Ordinal)).Sum(piece => patterns[piece.Pattern].Drills.Count(drill => drill.Purpose == "tie"));
        var notice = Assert.Single(finishing.Notices, notice => notice.Code == "marks-not-pierced");
        Assert.Equal(NoticeLevel.Warning, notice.Level);
        Assert.Contains(FormattableString.Invariant($"{ties} marks \"tie\" on one cover may not be pierced"), notice.Text, StringComparison.Ordinal);
    }

    [Fact]
    public void Finish_FixingsOfAHem_AreDrawn()
    {
        var job = Jobs.Dome(3, 5, 3657.6);

        var finishing = Jobs.Pieces(job with { Hem = job.Hem with { Fixings = new HemFixings(Jobs.Mm(500), Jobs.Mm(25)) }, Marks = MarkWish.Bare with { Pierce = true } }).Finishing;

        Assert.Contains(finishing.Set.Patterns.SelectMany(pattern => pattern.Drills), drill => drill.Purpose == "fixing");
        Assert.DoesNotContain(finishing.Set.Patterns.SelectMany(pattern => pattern.Drills), drill => drill.IsPierced);
        Assert.Contains(finishing.Notices, notice => notice.Code == "marks-not-pierced" && notice.Text.Contains("\"fixing\"", StringComparison.Ordinal));
    }

    [Theory]
    [InlineData(8, true)]
    [InlineData(1.4, false)]
    [InlineData(14, false)]
    [InlineData(-8, false)]
    [InlineData(0, false)]
    public void On_MarkBesideTheSewLine_OnlyWhollyInTheAllowance(double beyond, bool isPierced)
    {
        // An allowance of 15 mm and a hole of 3 mm: 1.5 mm beyond the sew line to 13.5 mm.
        var job = Jobs.Dome(3, 5, 3657.6);
        var pattern = Jobs.Pieces(job).Finishing.Set.Patterns.First(one => one.Runs.All(run => run.Role == CoverPattern.Patterns.Seams.EdgeRole.Seam));
        var (from, to) = (pattern.SewLine[0], pattern.SewLine[1]);
        var outward = -1 * (to - from).Unit().QuarterTurned();
        var marked = pattern with { Drills = [new DrillMark(Grid.Snap(Point2.Between(from, to, 0.5) + (beyond * outward)), "drawn by hand")] };
        var draft = new PieceDraft("P", "canvas", PieceKind.Facet, pattern.SewLine, [.. pattern.Runs.Select(run => new DraftRun(default, new ArcClass(run.ArcClass, run.Role, null, run.LengthMm, 0), run.Side, run.AllowanceMm))]);

        Assert.Equal(isPierced, Piercing.On(marked, draft).Drills[0].IsPierced);
    }

    [Fact]
    public void HoleRing_Mark_IsAnOctagonOfThreeMillimetres()
    {
        // Area of a regular octagon in a circle of radius r: 2 sqrt(2) r^2 (plane geometry).
        var hole = new DrillMark(new Point2(100, 50), "pivot", IsPierced: true).HoleRing();

        Assert.Equal(8, hole.Length);
        Assert.Equal(2 * Math.Sqrt(2) * 1.5 * 1.5, Rings.SignedArea(hole), 0.01);
        Assert.All(hole, point => Assert.Equal(1.5, Point2.Distance(point, new Point2(100, 50)), 0.001));
    }

    /// <summary>Rows in three parts, so that there are inside corners.</summary>
    private static Job Rows()
    {
        var job = Jobs.Dome(3, 5, 3657.6);
        return job with { Panels = [new PanelWish(PanelForm.Bands) { Parts = 3 }], Cloths = [job.Cloths[0] with { RollWidth = Jobs.Mm(6000) }] };
    }
}
