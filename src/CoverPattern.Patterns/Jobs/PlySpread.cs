namespace CoverPattern.Patterns.Jobs;

/// <summary>How plies lie upon each other.</summary>
public enum PlySpread
{
    /// <summary>All with the same side up: every ply gives the same hand.</summary>
    OneWay,

    /// <summary>Face to face: every second ply lies the other way up and gives mirror twins.</summary>
    FaceToFace,
}
