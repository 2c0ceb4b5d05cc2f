using System.Collections.Generic;
using System.Collections.Immutable;
using System.Linq;
using CoverPattern.Geometry;
using CoverPattern.Patterns.Seams;

namespace CoverPattern.Patterns.Pieces;

/// <summary>Puts ticks on rims that are no circles: at the same places of the rim on the cover and on what fills the opening.</summary>
/// <remarks>A rim is counted from where it begins, counter-clockwise round the opening: what fills it runs that way, the cover the other.</remarks>
internal static class RimNotches
{
    // Length of a pen tick where the edge has no allowance to hold it (own choice: seen across a table), millimetres.
    private const double TickLength = 8;

    // How far inside a cut line that lies within the sew line a mark stands, so that its cross is on the cloth (own choice), millimetres.
    private const double OffEdge = 6;

    /// <summary>The ticks of one run, in order along it; none on other edges.</summary>
    /// <param name="run">The run.</param>
    /// <param name="index">Its index.</param>
    /// <param name="path">Its corners in order, last one included, on the grid.</param>
    internal static IEnumerable<Notch> Make(DraftRun run, int index, ImmutableArray<Point2> path)
    {
        if (run.Class.Role != EdgeRole.Rim || run.Round is not null)
        {
            return [];
        }

        var length = run.Class.LengthMm;
        var marks = MarkPattern.At(length, run.Class.MarkCode, bothWays: false);
        ImmutableArray<double> along = run.RunsForward ? marks : [.. marks.Select(at => length - at).Order()];
        return along.Select(at => Mark(run, index, path, at));
    }

    /// <summary>The places of one run that bear a mark of their own.</summary>
    /// <param name="run">The run.</param>
    /// <param name="path">Its corners in order, last one included, on the grid.</param>
    internal static IEnumerable<DrillMark> Places(DraftRun run, ImmutableArray<Point2> path) => run.Places.Select(place =>
    {
        var (step, on) = Find(path, run.RunsForward ? place.At : run.Class.LengthMm - place.At, run.Allowance);
        var inward = run.Allowance < 0 ? run.Allowance - OffEdge : 0;
        return new DrillMark(Grid.Snap(step.From + (on * step.Along) + (inward * step.Outward)), place.Purpose);
    });

    private static (SewEdge Step, double On) Find(ImmutableArray<Point2> path, double at, double allowance)
    {
        var (edge, before) = (0, 0.0);
        while (edge < path.Length - 2 && before + Point2.Distance(path[edge], path[edge + 1]) < at)
        {
            before += Point2.Distance(path[edge], path[edge + 1]);
            edge++;
        }

        return (new SewEdge(path[edge], path[edge + 1], EdgeRole.Rim, allowance), at - before);
    }

    private static Notch Mark(DraftRun run, int index, ImmutableArray<Point2> path, double at)
    {
        var (step, along) = Find(path, at, run.Allowance);
        var on = step.From + (along * step.Along);
        var outer = on + (run.Allowance * step.Outward);
        var depth = run.Allowance > 0 ? System.Math.Min(TickLength, run.Allowance) : TickLength;
        return new Notch(index, at, NotchForm.Tick, Grid.Snap(on), Grid.Snap(outer), Grid.Snap(outer - (depth * step.Outward)));
    }
}
