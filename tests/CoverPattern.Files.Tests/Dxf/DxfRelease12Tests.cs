using System;
using System.Collections.Immutable;
using System.Linq;
using System.Text;
using System.Text.Json.Nodes;
using System.Text.RegularExpressions;
using CoverPattern.Files.Drawings;
using CoverPattern.Files.Dxf;
using CoverPattern.Files.Tests.Drawings;
using CoverPattern.Geometry;

namespace CoverPattern.Files.Tests.Dxf;

/// <summary>DXF of release 12: our own checker, ezdxf and GDAL.</summary>
public class DxfRelease12Tests
{
    private static readonly Drawing Lay = LayDrawing.Draw(SamplePieces.Lay, SamplePieces.Set);

    private static readonly byte[] File = DxfWriter.Write(Lay, DxfRelease.AC1009);

    private static readonly string Sound = Encoding.ASCII.GetString(File);

    [Fact]
    public void Faults_SoundFiles_None()
    {
        Assert.Empty(DxfRelease12Structure.Faults(Sound));
        Assert.Empty(DxfRelease12Structure.Faults(Encoding.ASCII.GetString(DxfWriter.Write(PatternSheet.Draw(SamplePieces.Set), DxfRelease.AC1009))));
        Assert.Empty(DxfRelease12Structure.Faults(Encoding.ASCII.GetString(DxfWriter.Write(new Drawing("nothing", [], [], [], []), DxfRelease.AC1009))));
    }

    [Theory]
    [InlineData("^AC1009\n", "AC1015\n", "does not say AC1009")]
    [InlineData("^  0\nSECTION\n  2\nTABLES\n", "  0\nSECTION\n  2\nTABELS\n", "The sections are not")]
    [InlineData("^  0\nLINE\n", "  0\nLINE\n  5\n1A\n", "a field that is newer")]
    [InlineData("^  0\nLINE\n", "  0\nLWPOLYLINE\n", "is newer than release 12")]
    [InlineData("^  0\nSEQEND\n  8\nCUT\n", "", "does not announce its corners, or begins inside another")]
    [InlineData("^ 66\n1\n", "", "does not announce its corners")]
    [InlineData("^  0\nVERTEX\n  8\nCUT\n", "  0\nVERTEX\n  8\nSEW\n", "a corner of no line on its layer")]
    [InlineData("^(  0\nLINE\n  8\n)[A-Z_]+\n", "${1}CAT\n", "not in the table LAYER")]
    [InlineData("^(  0\nINSERT\n  8\n0\n  2\n)T01", "${1}T09", "inserts a block that is not there")]
    [InlineData("^(  0\nBLOCK\n  8\n0\n  2\n)T01", "${1}T02", "A block's name stands twice")]
    [InlineData("^  0\nENDBLK\n  8\n0\n", "", "A block does not end")]
    [InlineData("^(  2\nLAYER\n 70\n)1[0-9]\n", "${1}99\n", "as many parts as it says")]
    public void Faults_PlantedFault_IsFound(string pattern, string replacement, string expected)
    {
        var broken = new Regex(pattern, RegexOptions.Multiline, Regex.InfiniteMatchTimeout).Replace(Sound, replacement, count: 1);

        Assert.NotEqual(Sound, broken);
        Assert.Contains(DxfRelease12Structure.Faults(broken), fault => fault.Contains(expected, StringComparison.Ordinal));
    }

    [Fact]
    public void Ezdxf_Lay_NoErrorsAndOnlyTheKnownFix()
    {
        var script = System.IO.Path.Combine(ReaderPrograms.Repository(), "tests", "CoverPattern.Files.Tests", "Dxf", "Readers", "read_dxf.py");
        var found = JsonNode.Parse(ReaderPrograms.Run(File, ".dxf", ReaderPrograms.Python, file => [script, file]))!;

        Assert.Equal("AC1009", (string?)found["release"]);
        Assert.Empty(found["errors"]!.AsArray());
        // ezdxf gives the end of each line of several steps inside a block a layer of its own making: one known fix a POLYLINE.
        var polylines = Lay.Blocks.Sum(block => block.Lines.Count(line => line.Points.Length > 2));
        var fixes = found["fixes"]!.AsArray().Select(fix => (string)fix!).ToArray();
        Assert.All(fixes, fix => Assert.Contains("SEQEND", fix, StringComparison.OrdinalIgnoreCase));
        Assert.Equal(polylines, fixes.Length);
        Assert.All(Lay.Blocks, block => Assert.Equal(
            LineComparison.Counts(block.Lines).ToImmutableSortedDictionary(pair => pair.Key.Replace("LWPOLYLINE", "POLYLINE", StringComparison.Ordinal), pair => pair.Value),
            found["blocks"]![block.Name]!.AsObject().ToImmutableSortedDictionary(pair => pair.Key, pair => (int)pair.Value!)));
        var lines = found["lines"]!.AsArray().Select(line => ((string)line!["layer"]!, line["points"]!.AsArray().Select(point => new Point2((double)point![0]!, (double)point[1]!)).ToImmutableArray()));
        LineComparison.Check(LineComparison.Expected(SamplePieces.Lay), lines);
    }

    [Fact]
    public void Gdal_Lay_ReadsEveryEntity()
    {
        var text = ReaderPrograms.Run(File, ".dxf", "ogr2ogr", file => ["--config", "DXF_MERGE_BLOCK_GEOMETRIES", "FALSE", "-f", "GeoJSON", "/vsistdout/", file]);

        Assert.Equal(Lay.LinesOnSheet().Count() + Lay.Texts.Length, JsonNode.Parse(text)!["features"]!.AsArray().Count);
    }
}
