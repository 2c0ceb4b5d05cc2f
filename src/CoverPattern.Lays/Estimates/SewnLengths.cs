using System;
using System.Collections.Generic;
using System.Collections.Immutable;
using System.Linq;
using CoverPattern.Patterns.Pieces;
using CoverPattern.Patterns.Seams;

namespace CoverPattern.Lays.Estimates;

/// <summary>Everything on one cover that is sewn along a line.</summary>
/// <param name="Seams">Each seam once: name of its make-up and length, millimetres.</param>
/// <param name="Stitched">Lines stitched that join no two edges: outer edges of window rings, rims turned under on both layers, upper edges of splash bands, all round stove pipes.</param>
/// <param name="Hems">Lengths of the pieces of finished lower edge, millimetres.</param>
internal sealed record SewnLengths(
    ImmutableArray<(string MakeUp, double LengthMm)> Seams, ImmutableArray<(string Name, double LengthMm)> Stitched, ImmutableArray<double> Hems)
{
    /// <summary>Names of what is stitched, as rates name them.</summary>
    internal const string Ring = "window ring";
    internal const string Rim = "window rim";
    internal const string Splash = "splash band";
    internal const string Pipe = "stove pipe";
    internal const string Strip = "strip of an opening";
    internal const string LinerEdge = "liner edge";
    internal const string Ground = "ground flap";
    internal const string Bag = "bag";
    internal const string Hood = "hood";
    internal const string Flap = "edge of the roof's flap";

    internal static SewnLengths Of(Dictionary<string, Pattern> patterns, IReadOnlyCollection<Piece> cover)
    {
        var runs = cover.SelectMany(piece => patterns[piece.Pattern].Runs.Select((run, i) => (piece.Runs[i].Arc, Run: run))).ToArray();
        return new SewnLengths(
            [.. runs.Where(run => run.Run.Role == EdgeRole.Seam).DistinctBy(run => run.Arc, StringComparer.Ordinal).Select(run => (run.Run.MakeUp, run.Run.LengthMm))],
            [.. cover.SelectMany(piece => StitchedOn(patterns[piece.Pattern])), .. runs.Where(run => run.Run.Role == EdgeRole.Hem && Liner.IsOf(run.Arc)).Select(run => (LinerEdge, run.Run.LengthMm))],
            [.. runs.Where(run => run.Run.Role == EdgeRole.Hem && !Liner.IsOf(run.Arc)).Select(run => run.Run.LengthMm)]);
    }

    private static IEnumerable<(string Name, double LengthMm)> StitchedOn(Pattern pattern)
    {
        if (pattern.Kind is PieceKind.GroundFlap or PieceKind.Bag)
        {
            foreach (var run in pattern.Runs.Where(run => run.Role == EdgeRole.Turned))
            {
                yield return (pattern.Kind == PieceKind.Bag ? Bag : Ground, run.LengthMm);
            }
        }

        // The lower edge carries hook and loop, the upper one is sewn to the roof's edge.
        foreach (var run in pattern.Runs.Where(run => pattern.Kind == PieceKind.RoofFlap && run.Role != EdgeRole.Seam))
        {
            yield return (Flap, run.LengthMm);
        }

        // The patch is sewn to the cover and to the sleeve, the sleeve's top and the flaps' edges are hemmed.
        if (pattern.Kind is PieceKind.PipePatch or PieceKind.PipeSleeve or PieceKind.PipeFlap)
        {
            var hole = pattern.Cutouts.Select(cutout => cutout.Run);
            foreach (var run in pattern.Runs.Where(run => run.Role == EdgeRole.Turned || (run.Role == EdgeRole.Rim && pattern.Kind == PieceKind.PipePatch)).Concat(hole))
            {
                yield return (Pipe, run.LengthMm);
            }
        }

        if (pattern.Kind is not (PieceKind.WindowRing or PieceKind.Strip or PieceKind.CoverStrip or PieceKind.Hood))
        {
            yield break;
        }

        foreach (var run in pattern.Runs.Where(run => run.Role is EdgeRole.Turned or EdgeRole.Hemmed))
        {
            yield return (pattern.Kind switch { PieceKind.WindowRing => Ring, PieceKind.CoverStrip => Strip, PieceKind.Hood => Hood, _ => Splash }, run.LengthMm);
        }

        // The rim is turned under and stitched on the ring, and on the cover under it.
        foreach (var cutout in pattern.Cutouts.Where(_ => pattern.Kind == PieceKind.WindowRing))
        {
            yield return (Rim, cutout.Run.LengthMm);
            yield return (Rim, cutout.Run.LengthMm);
        }
    }
}
