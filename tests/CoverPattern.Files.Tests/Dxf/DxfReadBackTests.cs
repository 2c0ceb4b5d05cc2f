using System;
using System.Collections.Generic;
using System.Collections.Immutable;
using System.Linq;
using System.Text.Json.Nodes;
using CoverPattern.Files.Drawings;
using CoverPattern.Files.Dxf;
using CoverPattern.Files.Tests.Drawings;
using CoverPattern.Geometry;

namespace CoverPattern.Files.Tests.Dxf;

/// <summary>Our DXF files in the eyes of two readers of other makers: ezdxf and GDAL.</summary>
public class DxfReadBackTests
{
    private static readonly Drawing Lay = LayDrawing.Draw(SamplePieces.Lay, SamplePieces.Set);
    private static readonly Drawing Sheet = PatternSheet.Draw(SamplePieces.Set);
    private static readonly Lazy<JsonNode> LayByEzdxf = new(() => ByEzdxf(Lay));
    private static readonly Lazy<JsonNode> SheetByEzdxf = new(() => ByEzdxf(Sheet));

    [Theory]
    [InlineData(true)]
    [InlineData(false)]
    public void Ezdxf_EitherDrawing_FindsNothingToMend(bool isLay)
    {
        var found = (isLay ? LayByEzdxf : SheetByEzdxf).Value;

        Assert.Equal("AC1015", (string?)found["release"]);
        Assert.Equal(4, (int)found["units"]!);
        Assert.Empty(found["errors"]!.AsArray());
        Assert.Empty(found["fixes"]!.AsArray());
        var layers = found["layers"]!.AsArray().Select(layer => (string)layer!).ToHashSet(StringComparer.Ordinal);
        Assert.All(DrawingLayers.All, layer => Assert.Contains(layer.Name, layers));
    }

    [Theory]
    [InlineData(true)]
    [InlineData(false)]
    public void Ezdxf_EitherDrawing_CountsWhatWasDrawn(bool isLay)
    {
        var (drawing, found) = isLay ? (Lay, LayByEzdxf.Value) : (Sheet, SheetByEzdxf.Value);

        var blocks = found["blocks"]!.AsObject();

        Assert.Equal(drawing.Blocks.Select(block => block.Name), blocks.Select(block => block.Key));
        Assert.All(drawing.Blocks, block => Assert.Equal(LineComparison.Counts(block.Lines), Counts(blocks[block.Name]!)));
        var sheet = LineComparison.Counts(drawing.Lines)
            .AddRange(drawing.Texts.GroupBy(text => text.Layer.Name + " TEXT").Select(group => KeyValuePair.Create(group.Key, group.Count())))
            .Add("0 INSERT", drawing.Insertions.Length);
        Assert.Equal(sheet, Counts(found["sheet"]!));
    }

    [Fact]
    public void Ezdxf_Sheet_InsertsEachPatternOnce()
    {
        var inserts = SheetByEzdxf.Value["inserts"]!.AsArray().Select(name => (string)name!);

        Assert.Equal(["T01", "T02", "T03", "T04"], inserts);
    }

    [Fact]
    public void Ezdxf_Lay_LinesLieWhereThePiecesLie()
    {
        var lines = LayByEzdxf.Value["lines"]!.AsArray().Select(Line);

        LineComparison.Check(LineComparison.Expected(SamplePieces.Lay), lines);
    }

    [Fact]
    public void Ezdxf_Sheet_LinesAreThePatternsMovedOnly()
    {
        var lines = SheetByEzdxf.Value["lines"]!.AsArray().Select(Line).ToArray();

        var moves = SamplePieces.Set.Patterns.Zip(lines.Where(line => line.Layer == "CUT"))
            .Select(pair => RigidMap.Identity with { Shift = pair.Second.Points[0] - pair.First.CutLine[0] });
        LineComparison.Check(SamplePieces.Set.Patterns.Zip(moves).SelectMany(pair => LineComparison.Of(pair.First, pair.Second)), lines);
    }

    [Fact]
    public void Ezdxf_Lay_EveryPieceIsNamedUprightInsideItself()
    {
        var texts = LayByEzdxf.Value["texts"]!.AsArray();

        Assert.All(texts, text => Assert.True((bool)text!["upright"]!));
        foreach (var placement in SamplePieces.Lay.Placements)
        {
            var label = texts.Single(text => (string?)text!["text"] == placement.Piece)!;
            var ring = Rings.ToSteps(SamplePieces.MapOf(placement).Apply(SamplePieces.PatternOf(placement.Piece).SewLine));
            Assert.Equal(1, ExactPredicates.Locate(ring, Grid.ToSteps(Point(label["at"]!))));
        }
    }

    [Theory]
    [InlineData(true)]
    [InlineData(false)]
    public void Gdal_EitherDrawing_ReadsEveryEntity(bool isLay)
    {
        var drawing = isLay ? Lay : Sheet;

        var features = ByGdal(drawing);

        Assert.Equal(drawing.LinesOnSheet().Count() + drawing.Texts.Length, features.Count);
        var byLayer = features.GroupBy(Layer).ToDictionary(group => group.Key, group => group.Count());
        Assert.All(
            drawing.LinesOnSheet().Select(line => line.Layer.Name).Concat(drawing.Texts.Select(text => text.Layer.Name)).GroupBy(name => name),
            layer => Assert.Equal(layer.Count(), byLayer[layer.Key]));
    }

    [Fact]
    public void Gdal_Lay_LinesLieWhereThePiecesLie()
    {
        var lines = ByGdal(Lay).Where(feature => (string?)feature!["geometry"]!["type"] == "LineString")
            .Select(feature => (Layer(feature), Open(feature!["geometry"]!["coordinates"]!)));

        LineComparison.Check(LineComparison.Expected(SamplePieces.Lay), lines);
    }

    private static JsonNode ByEzdxf(Drawing drawing)
    {
        var script = System.IO.Path.Combine(ReaderPrograms.Repository(), "tests", "CoverPattern.Files.Tests", "Dxf", "Readers", "read_dxf.py");
        return JsonNode.Parse(ReaderPrograms.Run(DxfWriter.Write(drawing), ".dxf", ReaderPrograms.Python, file => [script, file]))!;
    }

    /// <summary>Every entity as GDAL sees it, those of inserted blocks apart from each other.</summary>
    private static JsonArray ByGdal(Drawing drawing)
    {
        var text = ReaderPrograms.Run(DxfWriter.Write(drawing), ".dxf", "ogr2ogr", file =>
        [
            "--config", "DXF_MERGE_BLOCK_GEOMETRIES", "FALSE", "-f", "GeoJSON", "-lco", "COORDINATE_PRECISION=6", "/vsistdout/", file,
        ]);
        return JsonNode.Parse(text)!["features"]!.AsArray();
    }

    private static string Layer(JsonNode? feature) => (string)feature!["properties"]!["Layer"]!;

    private static ImmutableSortedDictionary<string, int> Counts(JsonNode counts) =>
        counts.AsObject().ToImmutableSortedDictionary(pair => pair.Key, pair => (int)pair.Value!);

    private static (string Layer, ImmutableArray<Point2> Points) Line(JsonNode? line) =>
        ((string)line!["layer"]!, [.. line["points"]!.AsArray().Select(Point)]);

    private static Point2 Point(JsonNode? point) => new((double)point![0]!, (double)point[1]!);

    /// <summary>The points of a line; a closed one repeats its first point for GDAL.</summary>
    private static ImmutableArray<Point2> Open(JsonNode coordinates)
    {
        ImmutableArray<Point2> points = [.. coordinates.AsArray().Select(Point)];
        return points.Length > 2 && points[0] == points[^1] ? points[..^1] : points;
    }
}
