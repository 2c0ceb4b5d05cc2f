using System.Collections.Immutable;
using System.Linq;
using CoverPattern.Geometry;

namespace CoverPattern.Lays.Cutting;

/// <summary>Every movement of the tool over one lay, in order.</summary>
/// <param name="Strokes">Piece by piece: marks, notches, holes, then the outline.</param>
public sealed record CutPlan(ImmutableArray<Stroke> Strokes)
{
    /// <summary>Length of outlines that are cut once for two pieces, millimetres; 0 where pieces do not touch.</summary>
    public double SharedMm { get; init; }

    /// <summary>Length along which a knife cuts, millimetres.</summary>
    public double CutMm => Strokes.Where(stroke => stroke.Use != StrokeUse.Draw).Sum(stroke => stroke.Length);

    /// <summary>Length along which a pen draws, millimetres.</summary>
    public double DrawnMm => Strokes.Where(stroke => stroke.Use == StrokeUse.Draw).Sum(stroke => stroke.Length);

    /// <summary>Length of travel with the tool lifted, from the origin of the lay to the first stroke and from each to the next, millimetres.</summary>
    public double IdleMm
    {
        get
        {
            var (at, sum) = (default(Point2), 0.0);
            foreach (var stroke in Strokes)
            {
                sum += Point2.Distance(at, stroke.Start);
                at = stroke.End;
            }

            return sum;
        }
    }
}
