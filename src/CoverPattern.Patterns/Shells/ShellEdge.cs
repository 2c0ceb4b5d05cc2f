namespace CoverPattern.Patterns.Shells;

/// <summary>A straight line between two faces, or at the border.</summary>
/// <param name="From">Index of the node from which the left face sees the edge begin.</param>
/// <param name="To">Index of the other node.</param>
/// <param name="LengthMm">The one length of the edge, used by both faces, millimetres.</param>
/// <param name="Left">Index of the face that runs along the edge forward.</param>
/// <param name="Right">Index of the face that runs along it backward; -1 at the border.</param>
public sealed record ShellEdge(int From, int To, double LengthMm, int Left, int Right)
{
    /// <summary>Whether cloth goes over this edge uncut because the frame has no strut there.</summary>
    public bool IsFold { get; init; }
}
