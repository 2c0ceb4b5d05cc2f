using System;
using System.Linq;
using System.Text;
using CoverPattern.Files.Results;
using CoverPattern.Files.Tests.Reports;
using CoverPattern.Geometry;
using CoverPattern.Lays;
using CoverPattern.Patterns.Jobs;
using CoverPattern.Patterns.Pieces;
using CoverPattern.Patterns.Seams;

namespace CoverPattern.Files.Tests.Results;

public class AddedPieceFilesTests
{
    [Fact]
    public void Write_PiecesOfThreeCloths_AreLaidCountedAndDrawnByCloth()
    {
        var result = ReportResults.WithLays(Job(), Ring("W1r", "R001"), Ring("W2r", "R002"), Disc("W1p", "clear"), Disc("W2p", "clear"), Disc("W1s", "mesh"));

        var files = ResultFiles.Write(result);

        Assert.Equal(["canvas", "clear", "mesh"], result.Lays.Select(lay => lay.Cloth));
        Assert.Empty(LayProof.Check(result.Lays, result.Pieces));
        Assert.All(["lay-canvas.dxf", "lay-clear.dxf", "lay-mesh.svg", "pieces.dxf", "report.html"], name => Assert.NotEmpty(files[name]));
        // By hand: discs of 320 mm radius have 0.321699 m2; two of them at 900 g/m2 and one at 100.
        Assert.Equal(2 * 0.321699, result.Estimate.Lays[1].PieceAreaM2, 0.00001);
        Assert.Equal(2 * 0.321699 * 0.9, result.Estimate.Lays[1].WeightKg!.Value, 0.00001);
        Assert.Equal(0.0321699, result.Estimate.Lays[2].WeightKg!.Value, 0.00001);
        Assert.Equal(result.Estimate.Lays.Sum(lay => lay.WeightKg), result.Estimate.WeightKg);
        Assert.Contains("clear", Encoding.UTF8.GetString(files[SummaryFile.Name]), StringComparison.Ordinal);
    }

    [Fact]
    public void Read_AddedPieces_ComeBackAsTheyWere()
    {
        var set = ReportResults.WithLays(Job(), Ring("W1r", "R001"), Disc("W1p", "clear"), Disc("W1s", "mesh")).Pieces;

        var file = PiecesFile.Write(set);

        Assert.Equal(file, PiecesFile.Write(PiecesFile.Read(file)));
        Assert.Contains("\"windowRing\"", Encoding.UTF8.GetString(file), StringComparison.Ordinal);
    }

    [Fact]
    public void Read_RimThatDoesNotClose_IsRefused()
    {
        var set = ReportResults.WithLays(Job(), Ring("W1r", "R001"), Disc("W1p", "clear"), Disc("W1s", "mesh")).Pieces;
        var broken = set with
        {
            Patterns = [.. set.Patterns.Select(pattern => pattern.Cutouts.IsEmpty
                ? pattern
                : pattern with { Cutouts = [pattern.Cutouts[0] with { Run = pattern.Cutouts[0].Run with { To = 5 } }] })],
        };

        var fault = Assert.Throws<ResultFormatException>(() => PiecesFile.Read(PiecesFile.Write(broken)));

        Assert.Contains("must end where it begins", fault.Message, StringComparison.Ordinal);
    }

    private static Job Job()
    {
        var job = ReportResults.Dome(2, 3);
        return job with
        {
            Cloths = [.. job.Cloths, job.Cloths[0] with { Name = "clear", MassPerArea = 900 }, job.Cloths[0] with { Name = "mesh", MassPerArea = 100 }],
        };
    }

    private static AddedPiece Ring(string label, string rim) =>
        AddedPiece.Disc(label, "canvas", PieceKind.WindowRing, new AddedEdge("U" + rim[1..], IsSecond: false, EdgeRole.Turned, 12) { Radius = 335 }) with
        {
            Cutouts = [new AddedCutout("window", new AddedEdge(rim, IsSecond: true, EdgeRole.Rim, 12) { Radius = 300, Marks = [new Point2(0, 1)] })],
        };

    private static AddedPiece Disc(string label, string cloth) =>
        AddedPiece.Disc(label, cloth, PieceKind.Pane, new AddedEdge("X" + label, IsSecond: false, EdgeRole.Raw, 0) { Radius = 320 });
}
