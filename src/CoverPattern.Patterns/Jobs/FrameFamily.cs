namespace CoverPattern.Patterns.Jobs;

/// <summary>Solids that a frame may be divided from; hubs are pushed out to the sphere.</summary>
public enum FrameFamily
{
    /// <summary>Twenty equal triangles, five at a corner.</summary>
    Icosahedron,

    /// <summary>Eight equal triangles, four at a corner.</summary>
    Octahedron,
}
