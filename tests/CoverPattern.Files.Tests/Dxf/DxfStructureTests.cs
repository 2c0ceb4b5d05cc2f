using System;
using System.Text;
using System.Text.RegularExpressions;
using CoverPattern.Files.Drawings;
using CoverPattern.Files.Dxf;
using CoverPattern.Files.Tests.Drawings;

namespace CoverPattern.Files.Tests.Dxf;

/// <summary>The checker itself: it must be silent on sound files and find each planted fault.</summary>
public class DxfStructureTests
{
    private static readonly string Sound = Encoding.ASCII.GetString(DxfWriter.Write(LayDrawing.Draw(SamplePieces.Lay, SamplePieces.Set)));

    [Fact]
    public void Faults_SoundFiles_None()
    {
        var sheet = Encoding.ASCII.GetString(DxfWriter.Write(PatternSheet.Draw(SamplePieces.Set)));
        var empty = Encoding.ASCII.GetString(DxfWriter.Write(new Drawing("nothing", [], [], [], [])));

        Assert.Empty(DxfStructure.Faults(Sound));
        Assert.Empty(DxfStructure.Faults(sheet));
        Assert.Empty(DxfStructure.Faults(empty));
    }

    [Theory]
    [InlineData("^  0\nLINE\n  5\n[0-9A-F]+", "  0\nLINE\n  5\n1", "The handle 1 stands 2 times")]
    [InlineData("^  0\nLINE\n  5\n[0-9A-F]+", "  0\nLINE\n  5\nFFFFF", "has no handle below the seed")]
    [InlineData("^  0\nLINE\n  5\n[0-9A-F]+\n", "  0\nLINE\n", "has no handle below the seed")]
    [InlineData("^(  0\nLINE\n  5\n[0-9A-F]+\n330\n)[0-9A-F]+", "${1}1E", "is not owned by its block record")]
    [InlineData("^(  0\nINSERT\n  5\n[0-9A-F]+\n330\n)[0-9A-F]+", "${1}0", "is not owned by its block record")]
    [InlineData("^(  0\nLAYER\n  5\n[0-9A-F]+\n330\n)[0-9A-F]+", "${1}0", "is not owned by its table")]
    [InlineData("^(  0\nLAYOUT\n  5\n[0-9A-F]+\n330\n)[0-9A-F]+", "${1}1", "is not listed by the dictionary")]
    [InlineData("^390\n[0-9A-F]+", "390\nFFFFF", "points to FFFFF")]
    [InlineData("^  8\nCUT\n", "  8\nCAT\n", "not in the table LAYER")]
    [InlineData("^  6\nDASHED\n", "  6\nDOTTED\n", "not in the table LTYPE")]
    [InlineData("^(AcDbLayerTableRecord\n  2\n)SEW\n", "${1}CUT\n", "stands twice in the table LAYER")]
    [InlineData("^(AcDbBlockReference\n  2\n)T01", "${1}T09", "inserts a block that is not there")]
    [InlineData("^(AcDbBlockTableRecord\n  2\n)T01", "${1}T09", "Blocks and block records")]
    [InlineData("^ 90\n3\n", " 90\n4\n", "as many parts as it says")]
    [InlineData("^( 70\n)1[0-9]\n", "${1}99\n", "as many parts as it says")]
    [InlineData("^ 73\n2\n 40\n15", " 73\n1\n 40\n15", "as many parts as it says")]
    [InlineData("^100\nAcDbPolyline\n", "", "subclass markers")]
    [InlineData("^  0\nSECTION\n  2\nCLASSES\n  0\nENDSEC\n", "", "The sections are not")]
    [InlineData("^  2\nUCS\n", "  2\nUSC\n", "The tables are not")]
    [InlineData("^  0\nEOF\n", "", "does not end")]
    [InlineData("^  1\nP1.01\n", "  1\nP1.0é\n", "not printable ASCII")]
    public void Faults_PlantedFault_IsFound(string pattern, string replacement, string expected)
    {
        var place = new Regex(pattern, RegexOptions.Multiline, Regex.InfiniteMatchTimeout);
        var broken = place.Replace(Sound, replacement, count: 1);

        var faults = DxfStructure.Faults(broken);

        Assert.NotEqual(Sound, broken);
        Assert.Contains(faults, fault => fault.Contains(expected, StringComparison.Ordinal));
    }
}
