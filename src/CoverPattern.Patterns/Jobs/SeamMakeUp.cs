namespace CoverPattern.Patterns.Jobs;

/// <summary>How two pieces are joined.</summary>
public enum SeamMakeUp
{
    /// <summary>Superimposed, edges level; each side has the width as its allowance.</summary>
    Plain,

    /// <summary>One over the other; the sew line is the middle of the lap, each side has half the width.</summary>
    Lapped,

    /// <summary>Flat-felled, sewn then folded: the under side has two widths, the over side one.</summary>
    Felled,

    /// <summary>Welded with one-sided reference: the under side has the whole width, the over side none.</summary>
    Welded,
}
