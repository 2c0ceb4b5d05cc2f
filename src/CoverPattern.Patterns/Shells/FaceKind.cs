namespace CoverPattern.Patterns.Shells;

/// <summary>What a plane face of a shell covers.</summary>
public enum FaceKind
{
    /// <summary>A facet of the frame.</summary>
    Facet,

    /// <summary>The strip between a base chord and the hem.</summary>
    Skirt,
}
