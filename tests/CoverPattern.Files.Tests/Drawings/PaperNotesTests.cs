using System;
using System.Linq;
using CoverPattern.Files.Drawings;
using CoverPattern.Files.Tests.Reports;

namespace CoverPattern.Files.Tests.Drawings;

public class PaperNotesTests
{
    [Fact]
    public void Draw_AssumptionsOpen_BothDrawingsSaySo()
    {
        // The job assumes ease and drop; ease is confirmed.
        var notes = PaperNotes.Of(ReportResults.Dome(2, 3));

        foreach (var drawing in new[] { PatternSheet.Draw(SamplePieces.Set, notes), LayDrawing.Draw(SamplePieces.Lay, SamplePieces.Set, notes) })
        {
            Assert.Contains(drawing.Texts, text => text.Text == "NOT CONFIRMED: 1 assumed value, listed on the left");
            var line = drawing.Texts.Single(text => text.Text == "skirt.drop: 60 mm");
            Assert.DoesNotContain(drawing.Texts, text => text.Text.StartsWith("ease", StringComparison.Ordinal));
            // Left of everything that is drawn.
            Assert.True(DrawingExtent.Corners(line).Max(corner => corner.X) < drawing.LinesOnSheet().Min(part => part.Points.Min(point => point.X)));
        }
    }

    [Fact]
    public void Draw_AllConfirmed_NothingIsSaid()
    {
        var job = ReportResults.Dome(2, 3);
        var notes = PaperNotes.Of(job with { Confirmed = [.. job.Assumed.Select(assumption => assumption.Place)] });

        Assert.Empty(notes.Unconfirmed);
        Assert.Equal(PatternSheet.Draw(SamplePieces.Set).Texts.AsEnumerable(), PatternSheet.Draw(SamplePieces.Set, notes).Texts);
    }
}
