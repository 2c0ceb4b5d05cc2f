using System;
using System.Collections.Immutable;
using System.Linq;
using CoverPattern.Geometry;
using CoverPattern.Patterns.Frames;
using CoverPattern.Patterns.Jobs;
using CoverPattern.Patterns.Seams;
using CoverPattern.Patterns.Shells;

namespace CoverPattern.Patterns.Pieces;

/// <summary>Makes the flap that hangs from the roof's edge outside and below the wall's: one length a strut, mitred and sewn to the next at hubs.</summary>
/// <remarks>
/// It lies on the wall. At a hub the wall has an angle a below the line; each length ends at half of it, so that the two lie on the wall beside each other
/// without gap or lap, whether the wall spreads (a over 180 degrees, the lower edge is longer) or closes [own derivation].
/// </remarks>
public static class RoofFlap
{
    // Turned at the lower edge (common practice, no source), millimetres.
    private const double TurnUnder = 15;

    /// <summary>The lengths, "S017f" along seam S017; none where no roof is wished.</summary>
    /// <param name="job">Its roof and cloth are read.</param>
    /// <param name="frame">The frame.</param>
    /// <param name="shell">The finished surface.</param>
    /// <param name="cut">The surface cut up.</param>
    public static ImmutableArray<AddedPiece> Make(Job job, Frame frame, Shell shell, Subdivision cut)
    {
        ArgumentNullException.ThrowIfNull(job);
        ArgumentNullException.ThrowIfNull(cut);
        if (job.Roof is not { } wish || RoofLine.Find(job, frame, shell) is not { } line)
        {
            return [];
        }

        var arcs = ArcsOf(line, cut);
        return [.. line.Loops.SelectMany(loop => loop.Select(step => Length(job, wish, (shell, line), (step, arcs[step.Edge]))))];
    }

    /// <summary>Label of the seam over each strut of the line, by the shell's edge.</summary>
    /// <param name="line">Where roof and wall part.</param>
    /// <param name="cut">The surface cut up.</param>
    public static ImmutableDictionary<int, string> ArcsOf(RoofLine line, Subdivision cut)
    {
        ArgumentNullException.ThrowIfNull(line);
        ArgumentNullException.ThrowIfNull(cut);
        return cut.Arcs.Where(arc => arc.MakeUp?.Name == RoofWish.ZipName && arc.Second is not null)
            .ToImmutableDictionary(arc => line.Steps.Single(step => step.Roof == cut.Patches[arc.First.Patch].Face && step.Wall == cut.Patches[arc.Second!.Value.Patch].Face).Edge, arc => arc.Label);
    }

    private static AddedPiece Length(Job job, RoofWish wish, (Shell Shell, RoofLine Line) on, (RoofStep Step, string Arc) along)
    {
        var (width, length) = (wish.Flap.Millimetres, along.Step.LengthMm);
        double Mitre(int node) => width / Math.Tan(on.Line.AngleAt(on.Shell, node, onRoof: false) / 2);
        return AddedPiece.Polygon(along.Arc + "f", job.Cloths[0].Name, PieceKind.RoofFlap,
        [
            (new Point2(Mitre(along.Step.From), 0), new AddedEdge(along.Arc + "e", IsSecond: false, EdgeRole.Turned, TurnUnder)),
            (new Point2(length - Mitre(along.Step.To), 0), End(on.Shell, along.Step.To, isSecond: false)),
            (new Point2(length, width), new AddedEdge(along.Arc + "f", IsSecond: true, EdgeRole.Raw, RoofWish.Zip.Width.Millimetres)),
            (new Point2(0, width), End(on.Shell, along.Step.From, isSecond: true)),
        ]);
    }

    private static AddedEdge End(Shell shell, int node, bool isSecond) => new(shell.Nodes[node].Label + "f", isSecond, EdgeRole.Seam, RoofWish.FlapSeam.OverMm)
    {
        MakeUp = RoofWish.FlapSeam,
        Side = isSecond ? EdgeSide.Under : EdgeSide.Over,
    };
}
