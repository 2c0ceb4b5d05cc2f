using System.Collections.Immutable;

namespace CoverPattern.Files.Drawings;

/// <summary>The layers of all our drawings. Names, order and colours are our own choice; docs/files.md lists them.</summary>
/// <remarks>What is drawn on the cloth has its own layers, so that no machine set to cut a layer can cut a mark.</remarks>
public static class DrawingLayers
{
    public static DrawingLayer Cut { get; } =
        new("CUT", "outer edge of a piece, allowances included", LayerUse.Cut, "#000000", 7, IsDashed: false);

    public static DrawingLayer InnerCut { get; } =
        new("INNER_CUT", "edge of an opening inside a piece", LayerUse.Cut, "#c00000", 1, IsDashed: false);

    public static DrawingLayer Pierce { get; } =
        new("PIERCE", "holes of marks that lie under a patch or in an allowance; only where the job asks for them", LayerUse.Cut, "#c06000", 30, IsDashed: false);

    public static DrawingLayer NotchSlit { get; } =
        new("NOTCH", "slits in the edge that meet those of the partner edge", LayerUse.Cut, "#a000a0", 6, IsDashed: false);

    public static DrawingLayer NotchTick { get; } =
        new("NOTCH_TICK", "notches drawn by pen on edges that must not be cut", LayerUse.Draw, "#a000a0", 6, IsDashed: false);

    public static DrawingLayer Sew { get; } =
        new("SEW", "sew line: the finished edge", LayerUse.Draw, "#0040c0", 5, IsDashed: false);

    public static DrawingLayer Fold { get; } =
        new("FOLD", "line where the cloth goes over a strut uncut", LayerUse.Draw, "#008000", 3, IsDashed: true);

    public static DrawingLayer Grain { get; } =
        new("GRAIN", "line along the warp, arrow at the end that goes first", LayerUse.Draw, "#008080", 4, IsDashed: false);

    public static DrawingLayer DrawnMark { get; } =
        new("DRAWN_MARK", "marks inside a piece and their names; never pierced", LayerUse.Draw, "#c06000", 30, IsDashed: false);

    public static DrawingLayer Registration { get; } =
        new("REGISTRATION", "crosses near the edges of the roll where two sections meet", LayerUse.Draw, "#606060", 8, IsDashed: false);

    public static DrawingLayer Label { get; } =
        new("LABEL", "names of pieces and patterns, in the allowance where one is wide enough", LayerUse.Draw, "#000000", 7, IsDashed: false);

    public static DrawingLayer Name { get; } =
        new("NAME", "large names inside the pieces, for people and screens", LayerUse.Sheet, "#000000", 7, IsDashed: false);

    public static DrawingLayer Roll { get; } =
        new("ROLL", "outline of the cloth cut off the roll", LayerUse.Sheet, "#606060", 8, IsDashed: false);

    public static DrawingLayer Usable { get; } =
        new("USABLE", "strip on which pieces may lie", LayerUse.Sheet, "#606060", 8, IsDashed: true);

    public static DrawingLayer Flaw { get; } =
        new("FLAW", "flawed areas of the cloth", LayerUse.Sheet, "#c00000", 1, IsDashed: true);

    public static DrawingLayer Scale { get; } =
        new("SCALE", "metres or feet along the roll", LayerUse.Sheet, "#606060", 8, IsDashed: false);

    public static DrawingLayer Title { get; } =
        new("TITLE", "what the drawing shows", LayerUse.Sheet, "#000000", 7, IsDashed: false);

    public static DrawingLayer TestSquare { get; } =
        new("TEST_SQUARE", "square of 100 mm: measure it before cutting", LayerUse.Sheet, "#c00000", 1, IsDashed: false);

    /// <summary>All layers in the order in which they are listed and painted.</summary>
    public static ImmutableArray<DrawingLayer> All { get; } =
    [
        Roll, Usable, Flaw, Scale, Title, TestSquare, Registration, Fold, Grain, DrawnMark, Sew, NotchTick, Pierce, NotchSlit, InnerCut, Cut, Name, Label,
    ];
}
