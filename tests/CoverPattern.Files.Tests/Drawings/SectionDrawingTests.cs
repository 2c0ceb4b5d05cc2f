using System;
using System.Linq;
using CoverPattern.Files.Drawings;
using CoverPattern.Geometry;

namespace CoverPattern.Files.Tests.Drawings;

public class SectionDrawingTests
{
    [Fact]
    public void Of_MachineThatTakesAll_TheLaysOwnDrawing()
    {
        var (_, drawing) = Assert.Single(SectionDrawing.Of(SamplePieces.Lay, SamplePieces.Set, PaperNotes.None, null));

        Assert.Equal(LayDrawing.Draw(SamplePieces.Lay, SamplePieces.Set).Insertions.Length, drawing.Insertions.Length);
    }

    [Fact]
    public void Of_ShortMachine_CutLinesTogetherAreThoseOfTheLay()
    {
        var sections = SectionDrawing.Of(SamplePieces.Lay, SamplePieces.Set, PaperNotes.None, 1700);

        double Length(string layer) => sections.Sum(part => part.Drawing.Lines.Where(line => line.Layer.Name == layer).Sum(LengthOf));
        Assert.True(sections.Length >= 3);
        foreach (var layer in LineComparison.Expected(SamplePieces.Lay).GroupBy(line => line.Layer))
        {
            var wanted = layer.Sum(line => LengthOf(new DrawnLine(DrawingLayers.Cut, line.Points, line.Points.Length > 2)));
            // A line along a section's end is in both.
            Assert.InRange(Length(layer.Key), wanted - 0.001, wanted * 1.02);
        }

        Assert.All(sections, part => Assert.All(
            part.Drawing.Lines.Where(line => line.Layer.Use == LayerUse.Cut).SelectMany(line => line.Points),
            point => Assert.InRange(point.X, -1e-9, part.Section.ToMm - part.Section.FromMm + 1e-9)));
    }

    [Fact]
    public void Of_ShortMachine_CrossesAndSquareOnEach()
    {
        var sections = SectionDrawing.Of(SamplePieces.Lay, SamplePieces.Set, new PaperNotes(["deck.datum: lowest"]), 1700);

        // Two crosses of two strokes at each shared end.
        var crosses = sections.Select(part => part.Drawing.Lines.Count(line => line.Layer == DrawingLayers.Registration)).ToArray();
        Assert.Equal(4, crosses[0]);
        Assert.Equal(8, crosses[1]);
        // A machine in the corner has no places before 0, and none beyond its length.
        Assert.All(sections, part => Assert.All(
            part.Drawing.Lines.Where(line => line.Layer == DrawingLayers.Registration).SelectMany(line => line.Points),
            point => Assert.InRange(point.X, 0, part.Section.ToMm - part.Section.FromMm)));
        Assert.All(sections, part => Assert.Single(part.Drawing.Lines, line => line.Layer == DrawingLayers.TestSquare));
        Assert.All(sections, part => Assert.Contains(part.Drawing.Texts, text => text.Text.Contains("NOT CONFIRMED", StringComparison.Ordinal)));
    }

    private static double LengthOf(DrawnLine line)
    {
        var points = line.IsClosed ? line.Points.Add(line.Points[0]) : line.Points;
        return points.Zip(points.Skip(1)).Sum(step => Point2.Distance(step.First, step.Second));
    }
}
