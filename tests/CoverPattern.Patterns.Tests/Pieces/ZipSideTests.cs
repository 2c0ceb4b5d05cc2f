using System;
using System.Linq;
using CoverPattern.Patterns.Jobs;
using CoverPattern.Patterns.Seams;

namespace CoverPattern.Patterns.Tests.Pieces;

public class ZipSideTests
{
    /// <summary>Two grid steps: each side is snapped with its own piece, and both are one line of the cover.</summary>
    [Theory]
    [InlineData(PanelForm.Facets)]
    [InlineData(PanelForm.Bands)]
    [InlineData(PanelForm.Gores)]
    public void Finish_Zips_BothSidesAreEquallyLongAndMarkedAlike(PanelForm form)
    {
        var job = Jobs.Dome(3, 5, 3657.6);
        var zipped = job with
        {
            Seam = job.Seam with { Others = [new SeamChoice(SeamSet.Uprights, [], MakeUp.Of(MakeUpForm.Zip, Jobs.Mm(20)))] },
            Panels = [new PanelWish(form)],
            Cloths = [job.Cloths[0] with { RollWidth = Jobs.Mm(20_000) }],
        };

        var set = Jobs.Pieces(zipped).Finishing.Set;

        var patterns = set.Patterns.ToDictionary(pattern => pattern.Id, StringComparer.Ordinal);
        var sides = set.Pieces.SelectMany(piece => patterns[piece.Pattern].Runs.Select((run, i) => (piece.Runs[i].Arc, Run: run, Marks: patterns[piece.Pattern].Notches.Count(notch => notch.Run == i))))
            .Where(side => side.Run.MakeUp == "zip").GroupBy(side => side.Arc, StringComparer.Ordinal).Select(group => group.ToArray()).ToArray();
        Assert.NotEmpty(sides);
        Assert.All(sides, pair =>
        {
            Assert.Equal([EdgeSide.Over, EdgeSide.Under], pair.Select(side => side.Run.Side).Order());
            Assert.Equal(pair[0].Run.LengthMm, pair[1].Run.LengthMm, 0.002);
            Assert.Equal((pair[0].Run.ArcClass, pair[0].Marks), (pair[1].Run.ArcClass, pair[1].Marks));
        });
    }
}
