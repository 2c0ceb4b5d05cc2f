namespace CoverPattern.Patterns.Pieces;

/// <summary>What a piece of cloth is on the cover.</summary>
public enum PieceKind
{
    /// <summary>One facet, with its skirt.</summary>
    Facet,

    /// <summary>A row of facets or a part of it.</summary>
    Band,

    /// <summary>A sector from the top to the base.</summary>
    Gore,

    /// <summary>Facets that the job names.</summary>
    Group,

    /// <summary>Ring of cloth round a window.</summary>
    WindowRing,

    /// <summary>Clear sheet of a window.</summary>
    Pane,

    /// <summary>Mesh of a window.</summary>
    Screen,

    /// <summary>Cloth that closes a door or vent.</summary>
    Flap,

    /// <summary>Cloth over a zip, over an upper edge or across a foot.</summary>
    CoverStrip,

    /// <summary>Cloth that stands off over an opening.</summary>
    Hood,

    /// <summary>Reinforcing patch.</summary>
    Patch,

    /// <summary>Strip sewn to an edge.</summary>
    Strip,

    /// <summary>Heat cloth round a stove pipe, out to its clear distance.</summary>
    PipePatch,

    /// <summary>Sleeve or cone boot round a stove pipe.</summary>
    PipeSleeve,

    /// <summary>Flap of heat cloth over a stove pipe's hole or its patch.</summary>
    PipeFlap,

    /// <summary>Strip or gusset along the finished edge that lies on the ground.</summary>
    GroundFlap,

    /// <summary>Insulation between the struts of one facet.</summary>
    Pad,

    /// <summary>Length of the flap that hangs from the edge of a roof that comes off, outside the wall.</summary>
    RoofFlap,

    /// <summary>Part of the bag that the cover is packed in.</summary>
    Bag,

    /// <summary>Drawn elsewhere.</summary>
    Outside,
}
