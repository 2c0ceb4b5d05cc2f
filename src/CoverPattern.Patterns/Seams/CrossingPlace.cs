namespace CoverPattern.Patterns.Seams;

/// <summary>What kind of place it is where lines of the cover meet.</summary>
public enum CrossingPlace
{
    /// <summary>Over a hub with facets all round.</summary>
    Hub,

    /// <summary>Over a hub at the border of the facets.</summary>
    BaseHub,

    /// <summary>At the foot of the skirt below a base hub.</summary>
    Foot,

    /// <summary>Where a line runs out at an edge, between the corners of the shell.</summary>
    Edge,
}
