namespace CoverPattern.Workshop.Tests.Sewing;

/// <summary>The numbers that fix a cover's surface.</summary>
/// <param name="Frequency">Parts of an edge of the icosahedron.</param>
/// <param name="Rows">Rows of facets from the top.</param>
/// <param name="Radius">Sphere through the hub centres, millimetres.</param>
/// <param name="StandOff">Between the facet planes of frame and cover, before ease, millimetres.</param>
/// <param name="Drop">Of the finished edge below the deck, before ease, millimetres.</param>
/// <param name="Ease">Ratio by which everything grows.</param>
internal sealed record CoverSizes(int Frequency, int Rows, double Radius, double StandOff, double Drop, double Ease)
{
    /// <summary>What was ordered below the base hubs.</summary>
    internal BaseOrder Base { get; init; } = new();

    /// <summary>The frame where it is not the icosahedron, vertex up; then frequency, rows and radius say nothing.</summary>
    internal TrueMesh? Frame { get; init; }

    internal TrueMesh Mesh => Frame ?? TrueMesh.Of(new TrueFrame(Frequency, Rows), Radius);
}
