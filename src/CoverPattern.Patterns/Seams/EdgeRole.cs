namespace CoverPattern.Patterns.Seams;

/// <summary>What an edge of a piece, or a line on the cover, is for.</summary>
public enum EdgeRole
{
    /// <summary>Joined to a partner edge.</summary>
    Seam,

    /// <summary>Cloth goes over a strut uncut.</summary>
    Fold,

    /// <summary>The finished lower edge of the cover.</summary>
    Hem,

    /// <summary>Edge of an opening.</summary>
    Rim,

    /// <summary>Joined to another edge of the same piece to take out fullness.</summary>
    Dart,

    /// <summary>Carries a zip tape.</summary>
    Zip,

    /// <summary>Raw edge under a binding.</summary>
    Bound,

    /// <summary>Turned under and stitched down on the piece that lies beneath.</summary>
    Turned,

    /// <summary>Turned under and stitched down on its own piece, joined to nothing.</summary>
    Hemmed,

    /// <summary>Left as cut, joined to nothing.</summary>
    Raw,
}
