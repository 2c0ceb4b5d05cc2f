namespace CoverPattern.Patterns.Jobs;

/// <summary>Solids that a frame may be divided from.</summary>
public enum FrameFamily
{
    /// <summary>Icosahedron, class I: the division lines run along the edges of the solid, hubs pushed out to the sphere.</summary>
    Icosahedron,
}
