namespace CoverPattern.Patterns.Seams;

/// <summary>What is sewn in one step of the order of sewing; in this order.</summary>
public enum SewingStepKind
{
    /// <summary>Fillings of holes, while their pieces lie flat.</summary>
    Rims,

    /// <summary>Seams that join a piece to itself.</summary>
    WithinPieces,

    /// <summary>Uprights between pieces of one row.</summary>
    WithinRow,

    /// <summary>A row to the one below it.</summary>
    BetweenRows,

    /// <summary>Pieces that reach over several rows, one to the next.</summary>
    AcrossRows,

    /// <summary>Uprights of the skirt.</summary>
    WithinSkirt,

    /// <summary>The skirt to the row above it.</summary>
    SkirtToRow,

    /// <summary>Fillings of openings whose rims run over several pieces.</summary>
    Openings,

    /// <summary>Zips and flap between a roof that comes off and the wall.</summary>
    Roof,

    /// <summary>The seam that is kept open until the girth is measured.</summary>
    Closing,
}
