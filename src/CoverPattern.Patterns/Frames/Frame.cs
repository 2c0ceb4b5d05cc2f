using System.Collections.Immutable;

namespace CoverPattern.Patterns.Frames;

/// <summary>The bars to be covered: hubs, struts between them, plane facets, open at the base.</summary>
/// <remarks>
/// z is up and 0 at the lowest base hub centres; the front is +x. Numbers are the frame's own: neither stand-off nor ease is in them.
/// </remarks>
/// <param name="Hubs">In order of ring and position.</param>
/// <param name="Struts">In order of their hubs.</param>
/// <param name="Facets">In order of row and position.</param>
/// <param name="Classes">Strut classes, shortest first.</param>
/// <param name="Base">Indexes of the base hubs, counter-clockwise seen from above: always 0, 1, 2 and so on.</param>
public sealed record Frame(
    ImmutableArray<Hub> Hubs,
    ImmutableArray<Strut> Struts,
    ImmutableArray<Facet> Facets,
    ImmutableArray<StrutClass> Classes,
    ImmutableArray<int> Base)
{
    /// <summary>Lines over which a facet of the real frame bends though no strut lies there; each pair with the lower index first.</summary>
    public ImmutableArray<(int From, int To)> Folds { get; init; } = [];

    /// <summary>Hubs round each place left open above the base, such as a crown ring or a window.</summary>
    public ImmutableArray<ImmutableArray<int>> Openings { get; init; } = [];
}
