using System.Collections.Generic;
using System.Collections.Immutable;
using System.Linq;
using CoverPattern.Files.Drawings;
using CoverPattern.Geometry;
using CoverPattern.Patterns.Pieces;
using CsCheck;

namespace CoverPattern.Files.Tests.Drawings;

public class PatternSheetTests
{
    [Fact]
    public void Draw_Sheet_EveryPatternOnceAsItIs()
    {
        var drawing = PatternSheet.Draw(SamplePieces.Set);

        Assert.Equal(["T01", "T02", "T03", "T04"], drawing.Insertions.Select(insertion => insertion.Block));
        Assert.All(drawing.Insertions, insertion => Assert.Equal((0.0, false), (insertion.TurnDegrees, insertion.IsMirrored)));
        Assert.Contains(drawing.Texts, text => text.Text == "T03: 2 x, canvas");
        Assert.Contains(drawing.Texts, text => text.Text == "Patterns, seen from outside");
        Assert.Contains(drawing.Texts, text => text.Text == "100 mm");
    }

    [Fact]
    public void Draw_NoPatterns_OnlyTheHead()
    {
        var drawing = PatternSheet.Draw(new PieceSet([], []));

        Assert.Empty(drawing.Insertions);
        Assert.Single(drawing.LinesOnSheet());
    }

    [Fact]
    public void Draw_PatternsOfAnySize_LieApartOnTheGridInASheetOfFairShape()
    {
        var size = Gen.Int[20, 4000 * 1024].Select(steps => steps / 1024.0);
        Gen.Select(size, size, size, size).Array[1, 40].Sample(sizes =>
        {
            var drawing = PatternSheet.Draw(new PieceSet([.. sizes.Select(Scaled)], []));

            var boxes = drawing.Blocks.Zip(drawing.Insertions)
                .Select(pair => Rings.Bounds(pair.First.Lines.SelectMany(line => pair.Second.Map.Apply(line.Points)))).ToArray();
            var captions = drawing.Texts.Where(text => text.Height == 20)
                .Select(text => Rings.Bounds(DrawingExtent.Corners(text))).ToArray();
            var heads = drawing.Texts.Where(text => text.Layer == DrawingLayers.Title).Select(text => Rings.Bounds(DrawingExtent.Corners(text)));
            Assert.Equal(boxes.Length, captions.Length);
            CheckApart([.. boxes, .. captions, .. heads]);
            Assert.All(drawing.Insertions, insertion => Assert.Equal(Grid.Snap(insertion.Shift), insertion.Shift));

            // The widest pattern sets a bound of its own; beyond it a sheet is at most twice as wide as meant.
            var extent = DrawingExtent.Measure(drawing);
            Assert.True(extent.Width <= 2 * extent.Height * 1.6 || extent.Width <= 2 * (4300 + boxes.Max(box => box.Width)));
        }, iter: 100);
    }

    private static Pattern Scaled((double Left, double Right, double Width, double Height) size, int index)
    {
        var pattern = SamplePieces.Set.Patterns[0];
        ImmutableArray<Point2> ring = [new(-size.Left, -size.Right), new(size.Width, -size.Right), new(0, size.Height)];
        return pattern with
        {
            Id = "T" + index,
            CutLine = ring,
            SewLine = ring,
            Notches = [],
            Grain = new GrainLine(ring[0], Grid.Snap(Point2.Between(ring[0], ring[1], 0.5))),
            LabelSpot = default,
            LabelRadius = 5,
        };
    }

    private static void CheckApart(IReadOnlyList<Box2> boxes)
    {
        for (var i = 0; i < boxes.Count; i++)
        {
            for (var j = i + 1; j < boxes.Count; j++)
            {
                var (a, b) = (boxes[i], boxes[j]);
                Assert.True(a.High.X < b.Low.X || b.High.X < a.Low.X || a.High.Y < b.Low.Y || b.High.Y < a.Low.Y, $"{a} meets {b}");
            }
        }
    }
}
