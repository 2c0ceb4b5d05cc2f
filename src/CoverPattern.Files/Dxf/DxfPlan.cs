using System.Collections.Immutable;
using System.Linq;
using CoverPattern.Files.Drawings;
using CoverPattern.Geometry;

namespace CoverPattern.Files.Dxf;

/// <summary>What the parts of one DXF file must agree on: names, owners, extent.</summary>
internal sealed class DxfPlan
{
    public DxfPlan(Drawing drawing)
    {
        Drawing = drawing;
        Extent = DrawingExtent.Measure(drawing);
        BlockNames = DxfNames.Of(drawing.Blocks.Select(block => block.Name));
        BlockRecords = BlockNames.ToImmutableDictionary(pair => pair.Key, _ => Handles.Next());
        (ModelRecord, PaperRecord) = (Handles.Next(), Handles.Next());
        (ModelLayout, PaperLayout) = (Handles.Next(), Handles.Next());
        PlotStyle = Handles.Next();
    }

    public Drawing Drawing { get; }

    public Box2 Extent { get; }

    public DxfHandles Handles { get; } = new();

    /// <summary>Name in the file by the block's own name.</summary>
    public ImmutableSortedDictionary<string, string> BlockNames { get; }

    /// <summary>Handle of the block record by the block's own name.</summary>
    public ImmutableDictionary<string, string> BlockRecords { get; }

    public string ModelRecord { get; }

    public string PaperRecord { get; }

    public string ModelLayout { get; }

    public string PaperLayout { get; }

    public string PlotStyle { get; }
}
