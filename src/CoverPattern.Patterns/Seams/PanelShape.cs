namespace CoverPattern.Patterns.Seams;

/// <summary>What a planned panel is on the cover.</summary>
public enum PanelShape
{
    /// <summary>One facet, with its skirt.</summary>
    Facet,

    /// <summary>A part of a row.</summary>
    Band,

    /// <summary>A sector.</summary>
    Gore,

    /// <summary>Facets that the job names.</summary>
    Group,

    /// <summary>The skirt below several base chords of one panel, a strip of its own.</summary>
    Skirt,
}
