using System;
using System.Linq;
using CoverPattern.Files.Drawings;
using CoverPattern.Geometry;
using CoverPattern.Lays;

namespace CoverPattern.Files.Tests.Drawings;

public class LayDrawingTests
{
    private static readonly Drawing Drawing = LayDrawing.Draw(SamplePieces.Lay, SamplePieces.Set);

    [Fact]
    public void Draw_Lay_OneBlockAPatternOneInsertionAPiece()
    {
        Assert.Equal(["T01", "T02", "T03", "T04"], Drawing.Blocks.Select(block => block.Name));
        Assert.Equal(["T01", "T01", "T02", "T02", "T03", "T04"], Drawing.Insertions.Select(insertion => insertion.Block));
    }

    [Fact]
    public void Draw_LayOfOnePiece_LeavesOtherPatternsOut()
    {
        var lay = SamplePieces.Lay with { Placements = [SamplePieces.Lay.Placements[4]] };

        Assert.Equal(["T03"], LayDrawing.Draw(lay, SamplePieces.Set).Blocks.Select(block => block.Name));
    }

    [Fact]
    public void Draw_Roll_OutlineAndUsableStripAreTheLays()
    {
        // By hand from the sample: 5000.5 x 1500, of it 1460 in the middle, 30 free at each end.
        Assert.Equal(
            [new(0, 0), new(5000.5, 0), new(5000.5, 1500), new(0, 1500)], Drawing.Lines.Single(line => line.Layer == DrawingLayers.Roll).Points.AsEnumerable());
        Assert.Equal(
            [new(30, 20), new(4970.5, 20), new(4970.5, 1480), new(30, 1480)],
            Drawing.Lines.Single(line => line.Layer == DrawingLayers.Usable).Points.AsEnumerable());
    }

    [Fact]
    public void Draw_Scale_MarksEveryMetreInsideTheRoll()
    {
        var texts = Drawing.Texts.Where(text => text.Layer == DrawingLayers.Scale).ToArray();

        Assert.Equal(["0 m", "1 m", "2 m", "3 m", "4 m", "5 m"], texts.Select(text => text.Text));
        Assert.Equal([0, 1000, 2000, 3000, 4000, 5000], texts.Select(text => text.At.X));
        // One long line, and a stroke every 100 mm from 0 to 5000.
        Assert.Equal(52, Drawing.Lines.Count(line => line.Layer == DrawingLayers.Scale));
    }

    [Fact]
    public void Draw_ShopThatMeasuresInInches_MarksEveryFootAndTellsInches()
    {
        var drawing = LayDrawing.Draw(SamplePieces.Lay, SamplePieces.Set, PaperNotes.None with { IsInInches = true });
        var texts = drawing.Texts.Where(text => text.Layer == DrawingLayers.Scale).ToArray();

        // By hand: 5000.5 mm are 16.406 ft, and 65 times 76.2 mm (3 in) are 4953.
        Assert.Equal(Enumerable.Range(0, 17).Select(foot => foot + " ft"), texts.Select(text => text.Text));
        Assert.All(texts.Select((text, foot) => (text.At.X, foot)), mark => Assert.Equal(mark.foot * 304.8, mark.X, 1e-9));
        var strokes = drawing.Lines.Where(line => line.Layer == DrawingLayers.Scale && line.Points[0].X == line.Points[1].X).Select(line => line.Points[0].X).ToArray();
        Assert.Equal(66, strokes.Length);
        Assert.Equal(4953, strokes.Max(), 1e-9);
        // 1500 mm are 59.055 in, 1460 are 57.480; 5000.5 are 196.870, the next sixteenth 196.875.
        Assert.Contains(drawing.Texts, text => text.Text.StartsWith("Roll 59 1/16 in wide, 57 1/2 in of it usable; cut 196 7/8 in off the roll", StringComparison.Ordinal));
    }

    [Theory]
    [InlineData(true, "canvas: as the cloth lies, face down: pieces are drawn from inside")]
    [InlineData(false, "canvas: as the cloth lies, face up: pieces are drawn seen from outside")]
    public void Draw_Title_SaysHowTheClothLies(bool faceDown, string expected)
    {
        var drawing = LayDrawing.Draw(SamplePieces.Lay with { FaceDown = faceDown }, SamplePieces.Set);

        Assert.Equal(expected, drawing.Texts.First(text => text.Layer == DrawingLayers.Title).Text);
    }

    [Fact]
    public void Draw_TestSquare_IsAHundredMillimetresAndNamed()
    {
        var box = Rings.Bounds(Drawing.Lines.Single(line => line.Layer == DrawingLayers.TestSquare).Points);

        Assert.Equal((100.0, 100.0), (box.Width, box.Height));
        Assert.Equal("100 mm", Drawing.Texts.Single(text => text.Layer == DrawingLayers.TestSquare).Text);
    }

    [Fact]
    public void Draw_Labels_EveryPieceOnceUprightInsideItsSewLineClearOfOpeningsAndGrain()
    {
        foreach (var placement in SamplePieces.Lay.Placements)
        {
            var (pattern, map) = (SamplePieces.PatternOf(placement.Piece), SamplePieces.MapOf(placement));
            var label = Drawing.Texts.Single(text => text.Text == placement.Piece);

            var corners = DrawingExtent.Corners(label).Select(Grid.ToSteps).ToArray();

            Assert.Equal(0, label.TurnDegrees);
            var sewLine = Rings.ToSteps(map.Apply(pattern.SewLine));
            Assert.All(corners, corner => Assert.Equal(1, ExactPredicates.Locate(sewLine, corner)));
            Assert.All(pattern.Cutouts.Select(cutout => cutout.CutLine), opening =>
                Assert.All(corners, corner => Assert.Equal(-1, ExactPredicates.Locate(Rings.ToSteps(map.Apply(opening)), corner))));
            var (from, to) = (Grid.ToSteps(map.Apply(pattern.Grain.From)), Grid.ToSteps(map.Apply(pattern.Grain.To)));
            Assert.All(corners.Zip([.. corners[1..], corners[0]]), side =>
                Assert.False(ExactPredicates.SegmentsMeet(side.First, side.Second, from, to)));
        }
    }

    [Fact]
    public void Draw_NotchesByPen_AreOnNoCuttingLayer()
    {
        var window = Drawing.Blocks.Single(block => block.Name == "T02");

        Assert.Equal(4, window.Lines.Count(line => line.Layer == DrawingLayers.NotchTick));
        Assert.Equal(
            ["CUT", "INNER_CUT", "PIERCE"], window.Lines.Where(line => line.Layer.Use == LayerUse.Cut).Select(line => line.Layer.Name));
    }

    [Fact]
    public void Draw_UnknownPiece_Throws()
    {
        var lay = SamplePieces.Lay with { Placements = [new Placement("P9.99", 0, 0, 0, Mirrored: false)] };

        var fault = Assert.Throws<ArgumentException>(() => LayDrawing.Draw(lay, SamplePieces.Set));

        Assert.Contains("P9.99", fault.Message, StringComparison.Ordinal);
    }
}
