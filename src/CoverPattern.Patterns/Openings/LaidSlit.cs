using System.Collections.Immutable;
using System.Linq;
using CoverPattern.Patterns.Jobs;

namespace CoverPattern.Patterns.Openings;

/// <summary>A slit at its place: a straight line along which the cover is cut and closed by a zip.</summary>
/// <param name="Label">Such as "O2", counted in the order of the job's entries.</param>
/// <param name="Entry">Index of its entry in the job.</param>
/// <param name="Wish">That entry.</param>
/// <param name="Lines">It face by face, from its lower end.</param>
/// <param name="Crossed">Indexes of the shell's edges that it crosses.</param>
public sealed record LaidSlit(string Label, int Entry, OpeningWish Wish, ImmutableArray<SurfaceLine> Lines, ImmutableArray<int> Crossed)
{
    /// <summary>Length of its zip's teeth, millimetres.</summary>
    public double LengthMm => Lines.Sum(line => line.Length);
}
