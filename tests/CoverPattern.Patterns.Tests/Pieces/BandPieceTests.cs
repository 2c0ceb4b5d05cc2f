using System;
using System.Collections.Generic;
using System.Linq;
using CoverPattern.Geometry;
using CoverPattern.Patterns.Jobs;
using CoverPattern.Patterns.Pieces;

namespace CoverPattern.Patterns.Tests.Pieces;

public class BandPieceTests
{
    private static readonly Cloth Wide = new("canvas", Jobs.Mm(20300), Jobs.Mm(10), Jobs.Mm(10), 350, Nap.None, HasFace: true);

    /// <summary>Boxes of least width of a fifth of each row, to 1 mm: own calculation of the check tables, part 5c; rows counted from the deck here.</summary>
    [Theory]
    [InlineData("B5.", 1476, 1040)]
    [InlineData("B4.", 3015, 1316)]
    [InlineData("B3.", 4020, 1316)]
    [InlineData("B2.", 4960, 1316)]
    [InlineData("B1.", 5229, 1372)]
    public void Finish_FifthsOfThreeV_HaveTabledBoxes(string row, double length, double width)
    {
        var set = Finish(Jobs.Dome(3, 5, 3657.6, standOff: 0), new PanelWish(PanelForm.Bands));

        var labels = set.Pieces.Where(piece => piece.Label.StartsWith(row, StringComparison.Ordinal) && !piece.Label.EndsWith('k')).ToArray();
        var pattern = set.Patterns.Single(pattern => pattern.Id == labels[0].Pattern);
        var box = Rings.Bounds(pattern.SewLine);
        Assert.Equal(5, labels.Length);
        Assert.Equal(length, box.High.X - box.Low.X, 1.0);
        Assert.Equal(width, box.High.Y - box.Low.Y, 1.0);
    }

    /// <summary>Lowest row of the 3V 5/8 as one strip: repeat 22454.077 mm, width 1371.508 mm, own calculation of the check tables, part 5c.</summary>
    [Fact]
    public void Finish_LowestRowInOnePart_IsAStraightStrip()
    {
        var set = Finish(
            Jobs.Dome(3, 5, 3657.6, standOff: 0), new PanelWish(PanelForm.Bands, new RowRange(1, 1)) { Parts = 1 }, new PanelWish(PanelForm.Facets));

        var piece = set.Pieces.Single(piece => piece.Label == "B1.1");
        var pattern = set.Patterns.Single(pattern => pattern.Id == piece.Pattern);
        var box = Rings.Bounds(pattern.SewLine);
        var ends = pattern.Runs.Where((_, i) => piece.Runs[i].Partner?.Piece == "B1.1").ToArray();
        Assert.Equal(1371.508, box.High.Y - box.Low.Y, 0.01);
        Assert.Equal(2, ends.Length);
        Assert.Equal(22454.077, Point2.Distance(pattern.SewLine[ends[0].From], pattern.SewLine[ends[1].To]), 0.01);
        Assert.Equal(0, pattern.SewLine[ends[0].From].Y - pattern.SewLine[ends[1].To].Y, 0.01);
        Assert.Equal(15, set.Pieces.Single(one => one.Label == "B1.1k").Facets.Length);
    }

    [Theory]
    [InlineData(2, 3, 0)]
    [InlineData(3, 5, 0)]
    [InlineData(4, 7, 15)]
    [InlineData(6, 9, 10)]
    public void Finish_BandsByFifths_GiveOnePatternARow(int frequency, int rows, int clips)
    {
        var set = Finish(Jobs.Dome(frequency, rows, 3657.6), new PanelWish(PanelForm.Bands));

        // One for each row, and one for the skirt; besides, patches under the clips of bends that no sector edge takes: on the
        // 4V five of the ten of 187.3 degrees and ten where the strip's upper edge dips to a low base hub, on the 6V ten of 191.6.
        var panels = set.Patterns.Where(pattern => pattern.Kind != PieceKind.Patch).ToArray();
        Assert.Equal(rows + 1, panels.Length);
        Assert.All(panels, pattern => Assert.Equal(5, pattern.Quantity));
        Assert.Equal(rows, panels.Count(pattern => pattern.Kind == PieceKind.Band));
        Assert.Equal(PieceKind.Strip, panels.Single(pattern => pattern.Kind != PieceKind.Band).Kind);
        Assert.Equal(clips, set.Pieces.Count(piece => piece.Label.EndsWith("-clip", StringComparison.Ordinal)));
    }

    [Theory]
    [InlineData(2, 3, 1)]
    [InlineData(3, 5, 5)]
    [InlineData(4, 6, 9)]
    public void Finish_Gores_AreFiveOfOnePattern(int frequency, int rows, int innerHubs)
    {
        // Inner hubs of a sector: own calculation of the check tables, part 8b; each needs one slit.
        var set = Finish(Jobs.Dome(frequency, rows, 3657.6), new PanelWish(PanelForm.Gores));

        var gores = set.Pieces.Where(piece => piece.Label.StartsWith('G') && !piece.Label.EndsWith('k')).ToArray();
        var pattern = set.Patterns.Single(pattern => pattern.Id == gores[0].Pattern);
        Assert.Equal(["G1", "G2", "G3", "G4", "G5"], gores.Select(gore => gore.Label));
        Assert.Equal((PieceKind.Gore, 5), (pattern.Kind, pattern.Quantity));
        Assert.All(gores, gore => Assert.Equal(2 * innerHubs, gore.Runs.Count(run => run.Partner?.Piece == gore.Label)));
    }

    [Theory]
    [InlineData(5, 8)]
    [InlineData(6, 10)]
    [InlineData(7, 11)]
    [InlineData(8, 10)]
    [InlineData(8, 13)]
    public void Plan_GoresOfFineFrames_FindSlitsThatLieFlat(int frequency, int rows)
    {
        var (_, plan) = Jobs.Panels(Jobs.Dome(frequency, rows, 5000) with { Panels = [new PanelWish(PanelForm.Gores)], Cloths = [Wide] });

        Assert.Empty(plan.Faults);
        Assert.NotEmpty(plan.Slits);
    }

    public static IEnumerable<object[]> Plans() =>
    [
        [new[] { new PanelWish(PanelForm.Bands) }],
        [new[] { new PanelWish(PanelForm.Bands) { Parts = 1 } }],
        [new[] { new PanelWish(PanelForm.Bands, new RowRange(1, 2)) { Parts = 10 }, new PanelWish(PanelForm.Facets) }],
        [new[] { new PanelWish(PanelForm.Bands) { Parts = 4 } }],
        [new[] { new PanelWish(PanelForm.Gores) }],
        [new[] { new PanelWish(PanelForm.Bands, new RowRange(1, 2)), new PanelWish(PanelForm.Facets) }],
        [new[] { new PanelWish(PanelForm.Gores, new RowRange(2, 3)), new PanelWish(PanelForm.Bands) }],
    ];

    [Theory]
    [MemberData(nameof(Plans))]
    public void Finish_AnyPlan_PartnersAgreeAndAreasSum(PanelWish[] plan)
    {
        foreach (var (frequency, rows) in new[] { (2, 3), (3, 5), (4, 6) })
        {
            var job = Jobs.Dome(frequency, rows, 5000) with { Panels = [.. plan], Cloths = [Wide] };
            var shell = Jobs.Shell(job);
            var (_, cut, finishing) = Jobs.Pieces(job);

            Assert.Empty(finishing.Faults);
            AssertPartnersAgree(finishing.Set);

            // Before snapping, and against the shell by cross products in space.
            var patches = cut.Patches.Sum(patch => Rings.SignedArea(patch.Corners));
            var surface = shell.Faces.Sum(face => Enumerable.Range(1, face.Nodes.Length - 2).Aggregate(
                default(Point3),
                (sum, i) => sum + Point3.Cross(shell.Nodes[face.Nodes[i]].Position - shell.Nodes[face.Nodes[0]].Position, shell.Nodes[face.Nodes[i + 1]].Position - shell.Nodes[face.Nodes[0]].Position)).Length / 2);
            var panels = PanelFlattener.Flatten(cut).Sum(panel => Rings.SignedArea([.. panel.Outline.Select(edge => edge.From)]));
            Assert.Equal(1, patches / surface, 1e-9);
            Assert.Equal(1, panels / surface, 1e-9);
        }
    }

    private static void AssertPartnersAgree(PieceSet set)
    {
        var patterns = set.Patterns.ToDictionary(pattern => pattern.Id);
        var pieces = set.Pieces.ToDictionary(piece => piece.Label);
        Assert.Equal(set.Pieces.Select(piece => piece.Label).Order(StringComparer.Ordinal), set.Pieces.Select(piece => piece.Label));
        foreach (var (piece, i) in set.Pieces.SelectMany(piece => piece.Runs.Select((run, i) => (piece, i))).Where(entry => entry.piece.Runs[entry.i].Partner is not null))
        {
            var partner = piece.Runs[i].Partner!;
            var (here, there) = (patterns[piece.Pattern].Runs[i], patterns[pieces[partner.Piece].Pattern].Runs[partner.Run]);
            Assert.Equal(new PartnerRun(piece.Label, i), pieces[partner.Piece].Runs[partner.Run].Partner);
            Assert.Equal(here.LengthMm, there.LengthMm, 0.01);
            Assert.Equal((here.ArcClass, true), (there.ArcClass, here.Side != there.Side));
        }
    }

    private static PieceSet Finish(Job job, params PanelWish[] panels)
    {
        var (_, _, finishing) = Jobs.Pieces(job with { Panels = [.. panels], Cloths = [Wide] });
        Assert.Empty(finishing.Faults);
        return finishing.Set;
    }
}
