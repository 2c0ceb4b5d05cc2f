using System.Collections.Immutable;

namespace CoverPattern.Patterns.Shells;

/// <summary>The finished surface of a cover before it is cut: plane faces, each with a chart; each edge one length.</summary>
/// <param name="Nodes">Over the frame's hubs in their order, then the feet of the skirt.</param>
/// <param name="Edges">In order of first use by the faces.</param>
/// <param name="Faces">Over the frame's facets in their order, then the skirt faces in order of the base chords.</param>
/// <param name="StandOffMm">Distance between the frame's facet planes and the shell's, before ease, millimetres.</param>
/// <param name="Ease">Ratio by which all lengths have grown.</param>
public sealed record Shell(
    ImmutableArray<ShellNode> Nodes,
    ImmutableArray<ShellEdge> Edges,
    ImmutableArray<ShellFace> Faces,
    double StandOffMm,
    double Ease)
{
    private const char SkirtLetter = 'k';

    /// <summary>Label of the skirt face below a facet, such as "F1.07k"; below a facet of several base chords "F1.07-2k" from the second on.</summary>
    /// <param name="facet">Label of the facet.</param>
    /// <param name="chord">Number of the chord among the facet's, 1 the first in the order of the base.</param>
    public static string SkirtLabel(string facet, int chord) =>
        facet + (chord > 1 ? System.FormattableString.Invariant($"-{chord}") : string.Empty) + SkirtLetter;

    /// <summary>Whether a face's label is that of a skirt.</summary>
    public static bool IsSkirt(string label)
    {
        System.ArgumentNullException.ThrowIfNull(label);
        return label.EndsWith(SkirtLetter);
    }
}
