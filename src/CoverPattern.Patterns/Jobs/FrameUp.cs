namespace CoverPattern.Patterns.Jobs;

/// <summary>What of the solid is at the top.</summary>
public enum FrameUp
{
    /// <summary>A corner.</summary>
    Vertex,

    /// <summary>The middle of an edge, which runs along the front.</summary>
    Edge,

    /// <summary>The middle of a face, one of its corners to the front.</summary>
    Face,
}
