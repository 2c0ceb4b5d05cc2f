using System;
using System.IO;
using System.Linq;
using System.Reflection;
using CoverPattern.Files.Drawings;

namespace CoverPattern.Files.Tests.Drawings;

public class DrawingLayersTests
{
    [Fact]
    public void All_Layers_AreListedOnce()
    {
        var properties = typeof(DrawingLayers).GetProperties(BindingFlags.Public | BindingFlags.Static)
            .Where(property => property.PropertyType == typeof(DrawingLayer)).Select(property => (DrawingLayer)property.GetValue(null)!);

        Assert.Equal(properties.Select(layer => layer.Name).Order(StringComparer.Ordinal), DrawingLayers.All.Select(layer => layer.Name).Order(StringComparer.Ordinal));
    }

    [Fact]
    public void All_Layers_StandInTheDocumentsTable()
    {
        var page = File.ReadAllText(Path.Combine(ReaderPrograms.Repository(), "docs", "files.md"));

        Assert.All(DrawingLayers.All, layer =>
        {
            var use = layer.Use switch { LayerUse.Cut => "cut", LayerUse.Draw => "draw", _ => "sheet" };
            Assert.Contains($"| `{layer.Name}` | {use} | {layer.Purpose} |", page, StringComparison.Ordinal);
        });
    }

    [Fact]
    public void All_OnlyEdgesSlitsAndHoles_AreCut() =>
        Assert.Equal(["CUT", "INNER_CUT", "NOTCH", "PIERCE"], DrawingLayers.All.Where(layer => layer.Use == LayerUse.Cut).Select(layer => layer.Name).Order(StringComparer.Ordinal));
}
