using System;
using System.IO;
using System.Linq;
using System.Text;
using System.Xml.Linq;
using CoverPattern.Files.Drawings;
using CoverPattern.Files.Dxf;
using CoverPattern.Files.Plots;
using CoverPattern.Files.Tests.Drawings;
using CoverPattern.Files.Tests.Dxf;

namespace CoverPattern.Files.Tests.Plots;

public class DrawingPlotsTests
{
    [Fact]
    public void Dxf_Sections_AFileEachAndAllSound()
    {
        var files = DrawingPlots.Dxf(SamplePieces.Set, [SamplePieces.Lay], PaperNotes.None, 2600, DxfRelease.AC1015);

        Assert.Equal(["lay-canvas-section-1.dxf", "lay-canvas-section-2.dxf", "patterns.dxf", "summary.json"], files.Keys);
        Assert.All(files.Where(file => file.Key.EndsWith(".dxf", StringComparison.Ordinal)), file => Assert.Empty(DxfStructure.Faults(Encoding.ASCII.GetString(file.Value))));
    }

    [Fact]
    public void Dxf_Release12_AllSound()
    {
        var files = DrawingPlots.Dxf(SamplePieces.Set, [SamplePieces.Lay], PaperNotes.None, null, DxfRelease.AC1009);

        Assert.Equal(["lay-canvas.dxf", "patterns.dxf", "summary.json"], files.Keys);
        Assert.All(files.Where(file => file.Key.EndsWith(".dxf", StringComparison.Ordinal)), file => Assert.Empty(DxfRelease12Structure.Faults(Encoding.ASCII.GetString(file.Value))));
    }

    [Fact]
    public void Svg_Sections_LayersAreGroupsAndTextIsText()
    {
        var files = DrawingPlots.Svg(SamplePieces.Set, [SamplePieces.Lay], PaperNotes.None, 2600);

        var drawing = XDocument.Load(new MemoryStream(files["lay-canvas-section-1.svg"])).Root!;
        var groups = drawing.Elements().Where(element => element.Name.LocalName == "g").Select(group => (string)group.Attribute("id")!).ToArray();
        Assert.All(groups, group => Assert.Contains(group, DrawingLayers.All.Select(layer => layer.Name)));
        Assert.Contains("CUT", groups);
        Assert.Contains("REGISTRATION", groups);
        Assert.Contains(drawing.Descendants().Where(element => element.Name.LocalName == "text"), text => text.Value == "P1.01");
        Assert.EndsWith("mm", (string)drawing.Attribute("width")!, StringComparison.Ordinal);
    }

    [Fact]
    public void Drawings_DrawnMarks_AreOnNoLayerThatIsCut()
    {
        var drawing = SectionDrawing.Of(SamplePieces.Lay, SamplePieces.Set, PaperNotes.None, 2600)[0].Drawing;

        // What is cut: outlines, holes and slits of the patterns, and holes of the marks that the sample has pierced; nothing else.
        Assert.Equal(["CUT", "INNER_CUT", "NOTCH", "PIERCE"], drawing.Lines.Where(line => line.Layer.Use == LayerUse.Cut).Select(line => line.Layer.Name).Distinct().Order(StringComparer.Ordinal));
        var plain = SamplePieces.Set with { Patterns = [.. SamplePieces.Set.Patterns.Select(pattern => pattern with { Drills = [.. pattern.Drills.Select(drill => drill with { IsPierced = false })] })] };
        Assert.DoesNotContain(SectionDrawing.Of(SamplePieces.Lay, plain, PaperNotes.None, 2600).SelectMany(part => part.Drawing.Lines), line => line.Layer == DrawingLayers.Pierce);
    }
}
