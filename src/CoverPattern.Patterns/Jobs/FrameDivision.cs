namespace CoverPattern.Patterns.Jobs;

/// <summary>How the faces of the solid are divided.</summary>
public enum FrameDivision
{
    /// <summary>Class I: division lines along the edges of the solid, which are cut in equal chords.</summary>
    EqualChord,

    /// <summary>Class I, the edges of the solid cut in equal arcs.</summary>
    EqualArc,

    /// <summary>Class I, hubs on the solid's edges shifted so that the base next to the equator is level: icosahedron 3V and 4V.</summary>
    LevelByEdgeHubs,

    /// <summary>Class I, hubs inside the solid's faces shifted so that the base next to the equator is level: icosahedron 4V.</summary>
    LevelByInnerHubs,

    /// <summary>Class II: division lines square to the edges of the solid; even frequencies.</summary>
    ClassTwo,
}
