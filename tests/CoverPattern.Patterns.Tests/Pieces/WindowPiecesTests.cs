using System;
using System.Linq;
using CoverPattern.Geometry;
using CoverPattern.Patterns.Pieces;
using CoverPattern.Patterns.Seams;
using CsCheck;

namespace CoverPattern.Patterns.Tests.Pieces;

public class WindowPiecesTests
{
    [Fact]
    public void Finish_WindowsOfOneSize_ShareOnePatternOverFacetsAndCovers()
    {
        var job = Jobs.Windowed(Jobs.Dome(3, 5, 3657.6), 450) with { Covers = 3 };

        var set = Jobs.Pieces(job).Finishing.Set;

        // Rows 2 and 3 of the 3V 5/8 have 30 and 25 facets of several kinds; three covers.
        foreach (var kind in new[] { PieceKind.WindowRing, PieceKind.Pane, PieceKind.Screen })
        {
            Assert.Equal(3 * 55, Assert.Single(set.Patterns, pattern => pattern.Kind == kind).Quantity);
        }

        var (pane, screen) = (set.Patterns.Single(p => p.Kind == PieceKind.Pane), set.Patterns.Single(p => p.Kind == PieceKind.Screen));
        Assert.Equal(pane.CutLine.AsEnumerable(), screen.CutLine);
        Assert.Equal(pane.Notches.AsEnumerable(), screen.Notches);
        Assert.Equal(("clear", "mesh"), (pane.Cloth, screen.Cloth));
    }

    [Fact]
    public void Finish_Windows_RimAndRingAreOneCircleWithOneSetOfMarks()
    {
        var set = Jobs.Pieces(Jobs.Windowed(Jobs.Dome(3, 5, 3657.6), 450)).Finishing.Set;

        var patterns = set.Patterns.ToDictionary(pattern => pattern.Id);
        var ring = set.Patterns.Single(pattern => pattern.Kind == PieceKind.WindowRing);
        var hosts = set.Patterns.Where(pattern => pattern.Kind == PieceKind.Facet && !pattern.Cutouts.IsEmpty).ToArray();
        Assert.NotEmpty(hosts);
        Assert.All(hosts, host =>
        {
            Assert.Equal(AboutCentre(ring).ToHashSet(), AboutCentre(host).ToHashSet());
            Assert.Equal(MarksAboutCentre(ring), MarksAboutCentre(host));
        });
        foreach (var piece in set.Pieces.Where(piece => patterns[piece.Pattern].Kind == PieceKind.WindowRing))
        {
            var rim = piece.Runs[1];
            var host = set.Pieces.Single(other => other.Label == rim.Partner!.Piece);
            Assert.Equal(new PartnerRun(piece.Label, 1), host.Runs[rim.Partner!.Run].Partner);
            Assert.Equal((rim.Arc, EdgeRole.Rim), (host.Runs[rim.Partner.Run].Arc, host.Runs[rim.Partner.Run].Role));
            Assert.Equal(piece.Label[1..^1], host.Facets[0][1..]);
        }
    }

    [Fact]
    public void Finish_AnyWindows_AreaAccountCloses() =>
        Gen.Select(Gen.Int[2, 4], Gen.Double[2000, 6000], Gen.Double[0.15, 0.5], Gen.Double[0, 40]).Sample(
            (frequency, radius, share, standOff) =>
            {
                var dome = Jobs.Dome(frequency, (3 * frequency) / 2, radius, standOff);
                // The inscribed circle of a facet is wider than 0.25 R / frequency on these domes.
                var job = Jobs.Windowed(dome, Math.Max(60, share * radius / frequency));

                var (_, cut, finishing) = Jobs.Pieces(job);

                var patterns = finishing.Set.Patterns.ToDictionary(pattern => pattern.Id);
                var sewn = finishing.Set.Pieces.Where(piece => patterns[piece.Pattern].Kind == PieceKind.Facet)
                    .Sum(piece => Rings.SignedArea(patterns[piece.Pattern].SewLine) + patterns[piece.Pattern].Cutouts.Sum(cutout => Rings.SignedArea(cutout.Rim)));
                Assert.Equal(1, sewn / cut.Patches.Sum(patch => patch.Area), 1e-6);
            },
            iter: 12);

    private static Point2 Centre(Pattern pattern) => Rings.Bounds(pattern.Cutouts[0].Rim).Centre;

    private static Point2[] AboutCentre(Pattern pattern) => [.. pattern.Cutouts[0].Rim.Select(corner => corner - Centre(pattern))];

    private static (double X, double Y)[] MarksAboutCentre(Pattern pattern) =>
    [
        .. pattern.Notches.Where(notch => notch.Run == pattern.Runs.Length).Select(notch => notch.OnSewLine - Centre(pattern))
            .Select(point => (Math.Round(point.X, 2) + 0.0, Math.Round(point.Y, 2) + 0.0)).Order(),
    ];
}
