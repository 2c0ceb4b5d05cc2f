using CoverPattern.Patterns.Seams;

namespace CoverPattern.Patterns.Pieces;

/// <summary>An edge of a pattern that is one thing from end to end: straight, or all round a ring where it begins and ends at one corner.</summary>
/// <param name="From">Index into the sew line of its first corner.</param>
/// <param name="To">Index into the sew line of its last corner.</param>
/// <param name="Role">What the edge is for.</param>
/// <param name="ArcClass">Class of equal edges, whose marks are alike, such as "c07".</param>
/// <param name="MakeUp">Name of the make-up of a seam; empty elsewhere.</param>
/// <param name="Side">Which of the two joined edges lies outside.</param>
/// <param name="LengthMm">Sewn length, millimetres.</param>
/// <param name="AllowanceMm">Cloth beyond the sew line, millimetres.</param>
public sealed record EdgeRun(int From, int To, EdgeRole Role, string ArcClass, string MakeUp, EdgeSide Side, double LengthMm, double AllowanceMm)
{
    /// <summary>Whether it goes all round its ring.</summary>
    public bool IsClosed => From == To;
}
