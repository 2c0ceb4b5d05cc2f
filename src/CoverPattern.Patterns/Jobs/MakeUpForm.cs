namespace CoverPattern.Patterns.Jobs;

/// <summary>How the edges of two pieces come together at a seam.</summary>
public enum MakeUpForm
{
    /// <summary>Superimposed, edges level; each side has the width as its allowance.</summary>
    Plain,

    /// <summary>One over the other; the sew line is the middle of the lap, each side has half the width.</summary>
    Lapped,

    /// <summary>Flat-felled, sewn then folded: the under side has two widths, the over side one.</summary>
    Felled,

    /// <summary>Flat-felled by a folder, both edges hooked into each other: the sew line is the middle of the seam, each side has one and a half widths.</summary>
    FolderFelled,

    /// <summary>Welded with one-sided reference: the under side has the whole width, the over side none.</summary>
    Welded,

    /// <summary>Welded with the sew line in the middle of the weld: each side has half the width.</summary>
    SplitWelded,

    /// <summary>Superimposed, the level raw edges wrapped in a binding; each side has the width, hidden in the binding.</summary>
    Bound,

    /// <summary>Both edges turned back beside the teeth of a zip; the sew line is the middle of the teeth.</summary>
    Zip,
}
