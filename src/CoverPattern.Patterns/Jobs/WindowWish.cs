using System.Collections.Immutable;

namespace CoverPattern.Patterns.Jobs;

/// <summary>Round windows of one size, one in each of some facets.</summary>
/// <param name="Facets">Labels of the facets; empty where rows are named.</param>
/// <param name="Rows">Rows of facets, counted from the deck up; null where facets are named.</param>
/// <param name="Aperture">Diameter that one sees through, positive.</param>
/// <param name="Ring">Width of the window ring beyond the aperture, positive.</param>
/// <param name="Lap">How far pane and screen reach beyond the aperture all round; less than the ring.</param>
/// <param name="TurnUnder">Cloth turned under at the rim of the cover and at both edges of the ring; at most half the ring.</param>
/// <param name="Pane">Name of the clear sheet among the cloths.</param>
public sealed record WindowWish(
    ImmutableArray<string> Facets,
    RowRange? Rows,
    Measure Aperture,
    Measure Ring,
    Measure Lap,
    Measure TurnUnder,
    string Pane)
{
    /// <summary>Name of the mesh among the cloths; null when no screens are wanted.</summary>
    public string? Screen { get; init; }

    /// <summary>How far the window stands right of the facet's incentre, seen from outside; negative to the left.</summary>
    public Measure Right { get; init; }

    /// <summary>How far it stands above the incentre, square to the facet's ring edge; negative below.</summary>
    public Measure Up { get; init; }

    /// <summary>Half the aperture, millimetres.</summary>
    public double ApertureRadius => Aperture.Millimetres / 2;

    /// <summary>Radius of the ring's finished outer edge, millimetres.</summary>
    public double OuterRadius => ApertureRadius + Ring.Millimetres;
}
