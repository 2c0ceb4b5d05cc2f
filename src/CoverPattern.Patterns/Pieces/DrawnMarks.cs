using System.Collections.Generic;
using System.Collections.Immutable;
using System.Linq;
using CoverPattern.Geometry;
using CoverPattern.Patterns.Jobs;
using CoverPattern.Patterns.Seams;

namespace CoverPattern.Patterns.Pieces;

/// <summary>Draws on a pattern what the sewers need beside notches: stops, inside corners, ties and patches.</summary>
internal sealed class DrawnMarks
{
    /// <summary>Purpose of the mark where a tie is sewn in.</summary>
    internal const string TiePurpose = "tie";

    private readonly double tieDistance;
    private readonly Dictionary<string, (bool AtStart, bool AtEnd)> tiedClasses;

    /// <param name="job">The ties' distance is read.</param>
    /// <param name="ties">Ties of one cover.</param>
    /// <param name="drafts">All pieces of one cover.</param>
    /// <param name="bothWays">Classes of seams that equal pieces use from either end.</param>
    internal DrawnMarks(Job job, ImmutableArray<Tie> ties, ImmutableArray<PieceDraft> drafts, IReadOnlySet<string> bothWays)
    {
        tieDistance = job.Marks.TieDistance.Millimetres;
        var classOf = drafts.SelectMany(draft => draft.Runs).DistinctBy(run => run.At.Arc, System.StringComparer.Ordinal)
            .ToDictionary(run => run.At.Arc, run => run.Class.Label, System.StringComparer.Ordinal);
        tiedClasses = ties.GroupBy(tie => classOf[tie.Arc], System.StringComparer.Ordinal).ToDictionary(
            group => group.Key,
            group => (group.Any(tie => tie.FromStart || bothWays.Contains(group.Key)), group.Any(tie => !tie.FromStart || bothWays.Contains(group.Key))),
            System.StringComparer.Ordinal);
    }

    /// <summary>The pattern with its marks.</summary>
    /// <param name="pattern">As made from the draft.</param>
    /// <param name="draft">The draft.</param>
    internal Pattern On(Pattern pattern, PieceDraft draft)
    {
        // Round pieces are added ones: no hub, no tie and no corner is on them.
        if (draft.Runs.Any(run => run.Round is not null))
        {
            return pattern;
        }

        ImmutableArray<SewEdge> edges = [.. pattern.Runs.Select(run => new SewEdge(pattern.SewLine[run.From], pattern.SewLine[run.To], run.Role, run.AllowanceMm))];
        var inside = InsideCorner.Find(pattern);
        var rims = RimCorner.Find(pattern).ToArray();
        return pattern with
        {
            Notches = [.. pattern.Notches.Select(notch => notch.Run < edges.Length && edges[notch.Run].Role != EdgeRole.Rim ? NotchReach.Shorten(notch, edges[notch.Run], pattern.CutLine) : notch)],
            Drills = [.. pattern.Drills, .. inside.Select(corner => corner.Pivot), .. rims.Select(rim => rim.Corner.Pivot), .. draft.Runs.SelectMany((run, i) => Ties(run, edges[i]))],
            Lines =
            [
                .. pattern.Lines,
                .. draft.Runs.SelectMany((run, i) => StoppedEdge.Strokes(run, edges[i])),
                .. inside.SelectMany(corner => corner.Clip(pattern.CutLine)),
                .. rims.SelectMany(rim => rim.Corner.Clip(rim.CutLine)),
                .. draft.Runs.SelectMany((run, i) => PatchArc.Draw(pattern, i, run.PatchRadius, PatchArc.OverHub)),
                .. inside.SelectMany(corner => PatchArc.Draw(pattern, corner.Run, ClipPatches.CutRadius(pattern, draft, corner), PatchArc.UnderClip)),
            ],
        };
    }

    /// <summary>Every seam of a class bears the marks of all, so that equal pieces stay equal; the list of ties tells which are used.</summary>
    private IEnumerable<DrillMark> Ties(DraftRun run, SewEdge edge)
    {
        if (run.Class.Role != EdgeRole.Seam || !tiedClasses.TryGetValue(run.Class.Label, out var tied))
        {
            return [];
        }

        var length = Point2.Distance(edge.From, edge.To);
        var (atStart, atEnd) = run.Side == EdgeSide.Over ? tied : (tied.AtEnd, tied.AtStart);
        (atStart, atEnd) = (atStart && run.Hubs.AtStart, atEnd && run.Hubs.AtEnd);
        double[] distances = [.. atStart ? [tieDistance] : System.Array.Empty<double>(), .. atEnd ? [length - tieDistance] : System.Array.Empty<double>()];
        return distances.Distinct().Select(at => new DrillMark(Grid.Snap(edge.From + (at * edge.Along)), TiePurpose));
    }
}
