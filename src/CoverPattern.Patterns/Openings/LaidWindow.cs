using CoverPattern.Patterns.Jobs;

namespace CoverPattern.Patterns.Openings;

/// <summary>A window at its place.</summary>
/// <param name="Label">Such as "W1.07" in facet F1.07; a second one there is "W1.07-2".</param>
/// <param name="Entry">Index of its entry in the job.</param>
/// <param name="Wish">That entry.</param>
/// <param name="Region">What it takes out of the shell.</param>
public sealed record LaidWindow(string Label, int Entry, WindowWish Wish, Region Region);
