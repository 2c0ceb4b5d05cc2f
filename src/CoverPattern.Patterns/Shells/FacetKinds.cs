using System;
using System.Collections.Generic;
using System.Linq;

namespace CoverPattern.Patterns.Shells;

/// <summary>How many unlike facets a cover has, before hem, seams and allowances.</summary>
/// <param name="Merged">Mirror twins counted as one.</param>
/// <param name="Handed">Mirror twins told apart.</param>
public sealed record FacetKinds(int Merged, int Handed)
{
    // Two grid steps, millimetres.
    private const double SameLength = 0.002;

    /// <summary>Counts the kinds of a shell's facets by their side lengths in order, within 0.002 mm.</summary>
    /// <remarks>Side lengths fix a triangle; for facets of more sides the diagonals from the first corner are compared too.</remarks>
    public static FacetKinds Count(Shell shell)
    {
        ArgumentNullException.ThrowIfNull(shell);

        var facets = shell.Faces.Where(face => face.Kind == FaceKind.Facet).Select(face => Spans(face).ToArray()).ToArray();
        return new FacetKinds(CountUnlike(facets, mirror: true), CountUnlike(facets, mirror: false));
    }

    /// <summary>For each corner the distances to all corners after it, in order round the facet.</summary>
    private static IEnumerable<double[]> Spans(ShellFace face)
    {
        var count = face.Chart.Length;
        return Enumerable.Range(0, count).Select(i => Enumerable.Range(1, count - 1)
            .Select(step => Geometry.Point2.Distance(face.Chart[i], face.Chart[(i + step) % count])).ToArray());
    }

    private static int CountUnlike(double[][][] facets, bool mirror)
    {
        var kinds = new List<double[][]>();
        foreach (var facet in facets)
        {
            if (!kinds.Exists(kind => Alike(kind, facet) || (mirror && Alike(kind, Mirrored(facet)))))
            {
                kinds.Add(facet);
            }
        }

        return kinds.Count;
    }

    private static double[][] Mirrored(double[][] spans) => [.. spans.Reverse().Select(span => span.Reverse().ToArray())];

    private static bool Alike(double[][] left, double[][] right) =>
        left.Length == right.Length && Enumerable.Range(0, left.Length).Any(shift => Enumerable.Range(0, left.Length).All(i =>
            left[i].Zip(right[(i + shift) % right.Length]).All(pair => Math.Abs(pair.First - pair.Second) <= SameLength)));
}
