using System;
using System.Collections.Generic;
using System.Linq;
using CoverPattern.Geometry;
using CoverPattern.Lays.Models;
using CoverPattern.Lays.Sheets;
using CoverPattern.Patterns.Frames;
using CoverPattern.Patterns.Jobs;
using CoverPattern.Patterns.Pieces;
using CoverPattern.Patterns.Seams;
using CoverPattern.Patterns.Shells;
using NetTopologySuite.Geometries;

namespace CoverPattern.Lays.Tests.Models;

public class ModelPlannerTests
{
    private const double Rounding = 1e-9;

    private static readonly ModelWish A4 = new(null, new SheetSize(210, 297));

    // Gores of a 3V dome have slits, bands have inside corners.
    public static TheoryData<PanelForm, int, int> Forms => new() { { PanelForm.Facets, 2, 3 }, { PanelForm.Bands, 3, 5 }, { PanelForm.Gores, 3, 5 }, { PanelForm.Gores, 4, 7 } };

    [Theory]
    [MemberData(nameof(Forms))]
    public void Plan_Dome_EverySeamHasExactlyOneTab(PanelForm form, int frequency, int rows)
    {
        var set = Dome(form, frequency, rows);

        var model = ModelPlanner.Plan(set, A4);

        var tabs = model.Placements.SelectMany(place => place.Piece.Tabs.Select(tab => place.Piece.Edges[tab.Run].Arc)).ToArray();
        // A seam is a line of the cover that two edges bear.
        var seams = set.Pieces.SelectMany(piece => piece.Runs).Where(run => run.Partner is not null).GroupBy(run => run.Arc, StringComparer.Ordinal).ToArray();
        Assert.All(seams, seam => Assert.Equal(2, seam.Count()));
        Assert.Equal(seams.Select(seam => seam.Key).Order(StringComparer.Ordinal), tabs.Order(StringComparer.Ordinal));
    }

    [Theory]
    [MemberData(nameof(Forms))]
    public void Plan_Dome_OutlinesAreTheSewLinesAtScale(PanelForm form, int frequency, int rows)
    {
        var set = Dome(form, frequency, rows);

        var model = ModelPlanner.Plan(set, A4);

        var patterns = set.Patterns.ToDictionary(pattern => pattern.Id, StringComparer.Ordinal);
        // What covers no faces, such as patches over corners, is left out and listed.
        var shell = set.Pieces.Where(piece => !piece.Facets.IsEmpty).ToArray();
        Assert.Equal(shell.Select(piece => piece.Label), model.Placements.Select(place => place.Piece.Label));
        Assert.Equal(set.Pieces.Length - shell.Length, model.LeftOut.Length);
        foreach (var (place, piece) in model.Placements.Zip(shell))
        {
            var printed = place.Map.Apply(place.Piece.Outline);
            var (sewLine, sign) = (patterns[piece.Pattern].SewLine, piece.Mirrored ? -1 : 1);
            Assert.Equal(sewLine.Length, printed.Length);
            for (var i = 0; i < sewLine.Length; i++)
            {
                var (j, k) = ((i + 1) % sewLine.Length, (i + 2) % sewLine.Length);
                Assert.Equal(Point2.Distance(sewLine[i], sewLine[j]), Point2.Distance(printed[i], printed[j]) * model.Wish.Scale!.Value, 6);
                // Seen from outside: the same turn at each corner, the other for a mirrored piece.
                var (turn, wanted) = (Point2.Cross(printed[j] - printed[i], printed[k] - printed[j]), Point2.Cross(sewLine[j] - sewLine[i], sewLine[k] - sewLine[j]));
                Assert.Equal(sign * wanted, turn * model.Wish.Scale.Value * model.Wish.Scale.Value, 0.01);
            }
        }
    }

    [Theory]
    [MemberData(nameof(Forms))]
    public void Plan_Dome_NothingOverlapsAndAllIsOnThePaper(PanelForm form, int frequency, int rows)
    {
        var model = ModelPlanner.Plan(Dome(form, frequency, rows), A4);

        foreach (var sheet in model.Placements.GroupBy(place => place.Sheet))
        {
            var shapes = sheet.SelectMany(place => place.Piece.Tabs.Select(tab => tab.Shape).Append(place.Piece.Outline).Select(ring => Polygon(place.Map.Apply(ring)))).ToArray();
            for (var i = 0; i < shapes.Length; i++)
            {
                Assert.True(shapes[i].IsValid);
                Assert.InRange(shapes[i].EnvelopeInternal.MinX, 10 - Rounding, 200);
                Assert.InRange(shapes[i].EnvelopeInternal.MaxX, 10 - Rounding, 200);
                Assert.InRange(shapes[i].EnvelopeInternal.MinY, 10 + PaperModel.FootMm - Rounding, 287);
                Assert.InRange(shapes[i].EnvelopeInternal.MaxY, 10 + PaperModel.FootMm - Rounding, 287);
                for (var j = 0; j < i; j++)
                {
                    Assert.True(shapes[i].Intersection(shapes[j]).Area < 1e-6, $"{i} and {j} on sheet {sheet.Key}");
                }
            }
        }
    }

    [Fact]
    public void Plan_Dome_TabsAreWideEnoughToGlue()
    {
        var model = ModelPlanner.Plan(Dome(PanelForm.Facets, 2, 3), A4);

        // Facets have no inside corners: every tab has its whole depth but near its ends.
        Assert.All(model.Placements.SelectMany(place => place.Piece.Tabs), tab => Assert.InRange(
            tab.Shape.Max(point => Lines.Distance(tab.Shape[0], tab.Shape[^1], point)),
            // Short edges, those of the skirt, have narrower ones: a third of their length.
            Math.Min(5.999, Point2.Distance(tab.Shape[0], tab.Shape[^1]) / 3),
            6.001));
    }

    [Fact]
    public void Plan_PieceLargerThanTheSheet_SaysWhichScaleFits()
    {
        var set = Dome(PanelForm.Gores, 3, 5);

        var fault = Assert.Throws<ModelPieceTooLargeException>(() => ModelPlanner.Plan(set, A4 with { Scale = 5 }));

        var scale = double.Parse(fault.Message.Split("Take 1:")[1].Split(' ')[0], System.Globalization.CultureInfo.InvariantCulture);
        Assert.Equal(scale, ModelPlanner.Plan(set, A4 with { Scale = scale }).Wish.Scale);
        Assert.Contains(fault.Label, set.Pieces.Select(piece => piece.Label));
    }

    [Fact]
    public void Plan_SeveralCovers_OneOfThem()
    {
        var model = ModelPlanner.Plan(Samples.TwoCovers(), A4 with { Scale = 10 });

        // By hand: two right-angled pieces with one seam between them, one opening in each; edges of 40, 50 and 30 mm.
        Assert.Equal(["C1 P1", "C1 P2"], model.Placements.Select(place => place.Piece.Label));
        Assert.Equal("S1", Assert.Single(model.Placements.SelectMany(place => place.Piece.Tabs.Select(tab => place.Piece.Edges[tab.Run].Arc))));
        Assert.Equal(1, model.Sheets);
        Assert.All(model.Placements, place => Assert.Equal(6, Rings.Bounds(place.Piece.Openings.Single()).Width, 9));
    }

    [Fact]
    public void Plan_Facets_FewSheets()
    {
        var model = ModelPlanner.Plan(Dome(PanelForm.Facets, 2, 3), A4);

        // Area of outlines and tabs over the area of the sheets: half at least.
        var area = model.Placements.Sum(place => place.Piece.Tabs.Select(tab => tab.Shape).Append(place.Piece.Outline).Sum(ring => Math.Abs(Rings.SignedArea(ring))));
        Assert.True(area > 0.5 * model.Sheets * 190 * 265, $"{area / (190 * 265):F1} of {model.Sheets} sheets");
    }

    private static Polygon Polygon(IEnumerable<Point2> ring)
    {
        var corners = ring.Select(point => new Coordinate(point.X, point.Y)).ToArray();
        return new Polygon(new LinearRing([.. corners, corners[0]]));
    }

    private static PieceSet Dome(PanelForm form, int frequency, int rows)
    {
        var job = Samples.Job(Samples.Canvas with { RollWidth = Samples.Mm(3000) }) with
        {
            Frame = new FrameWish(FrameFamily.Icosahedron, frequency, rows, string.Empty, FrameMeasure.Radius, Samples.Mm(2000)),
            Panels = [new PanelWish(form)],
        };
        var frame = FrameBuilder.Build(job.Frame);
        var shell = ShellFitter.Fit(job, frame);
        var panels = PanelPlanner.Plan(job, frame, shell);
        Assert.Empty(panels.Faults);
        var cut = Subdivider.Cut(shell, SeamPlanner.Plan(job, shell, panels));
        return PieceFinisher.Finish(job, shell, cut, PanelFlattener.Flatten(cut)).Set;
    }
}
