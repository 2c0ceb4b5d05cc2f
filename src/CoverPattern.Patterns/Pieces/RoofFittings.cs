using System;
using System.Collections.Generic;
using System.Collections.Immutable;
using System.Globalization;
using System.Linq;
using CoverPattern.Patterns.Frames;
using CoverPattern.Patterns.Jobs;
using CoverPattern.Patterns.Seams;
using CoverPattern.Patterns.Shells;

namespace CoverPattern.Patterns.Pieces;

/// <summary>Lists what goes on a roof that comes off beside cloth: zips, load tabs, hook and loop, lifting loops.</summary>
public static class RoofFittings
{
    /// <summary>What stands for the opening in fittings of the roof.</summary>
    public const string Roof = "roof";

    // Both halves of a load tab and what goes through its buckle; a loop with both ends sewn down (common practice, no source), millimetres.
    private const double TabLength = 400;
    private const double LoopLength = 500;
    private const double Webbing = 25;

    /// <summary>All of one cover; none where no roof is wished.</summary>
    /// <param name="job">Roof and notions are read.</param>
    /// <param name="frame">The frame.</param>
    /// <param name="shell">The finished surface.</param>
    /// <param name="cut">The surface cut up.</param>
    /// <param name="added">Its flap is read.</param>
    public static ImmutableArray<Fitting> Of(Job job, Frame frame, Shell shell, Subdivision cut, ImmutableArray<AddedPiece> added)
    {
        ArgumentNullException.ThrowIfNull(job);
        if (job.Roof is not { } wish || RoofLine.Find(job, frame, shell) is not { } line)
        {
            return [];
        }

        var (zips, arcs) = (RoofZips.Plan(job, shell, line), RoofFlap.ArcsOf(line, cut));
        return
        [
            .. zips.Select(zip => new Fitting(Fitting.Zip, Roof, zip.Label, zip.LengthMm, 0) { IsSeparating = true }),
            .. wish.Screen is null ? [] : zips.Select(zip => new Fitting(Fitting.Zip, Roof, zip.Label + "s", zip.LengthMm, 0) { IsSeparating = true }),
            .. line.Loops.SelectMany(loop => loop).SelectMany(step => RoofMarks.TabsAlong(step.LengthMm, wish.Tabs.Millimetres)
                .Select((_, i) => new Fitting(Fitting.LoadTab, Roof, string.Create(CultureInfo.InvariantCulture, $"{arcs[step.Edge]}t{i + 1}"), TabLength, Webbing))),
            .. added.Where(piece => piece.Kind == PieceKind.RoofFlap).Select(piece => new Fitting(Fitting.HookLoop, Roof, piece.Label, piece.LengthOf(0), wish.HookLoop.Millimetres)),
            .. wish.HasLoops ? LoopsAt(shell, line).Select(hub => new Fitting(Fitting.LiftingLoop, Roof, hub, LoopLength, Webbing)) : Array.Empty<Fitting>(),
        ];
    }

    /// <summary>Hubs that bear a lifting loop: of the roof's hubs off its edge the highest ring with three or more, else all of them; without any those of its edge.</summary>
    /// <param name="shell">The finished surface.</param>
    /// <param name="line">Where roof and wall part.</param>
    public static ImmutableArray<string> LoopsAt(Shell shell, RoofLine line)
    {
        ArgumentNullException.ThrowIfNull(shell);
        ArgumentNullException.ThrowIfNull(line);
        var edge = line.Steps.Select(step => step.From).ToHashSet();
        ShellNode[] inner = [.. line.Faces.SelectMany(face => shell.Faces[face].Nodes).Distinct().Where(node => !edge.Contains(node)).Select(node => shell.Nodes[node])];
        var ring = inner.GroupBy(node => HubLabels.RingOf(node)).Where(group => group.Count() >= 3).OrderByDescending(group => group.Key).FirstOrDefault();
        IEnumerable<ShellNode> hubs = ring ?? (inner.Length > 0 ? inner : edge.Select(node => shell.Nodes[node]));
        return [.. hubs.Select(node => node.Label).Order(StringComparer.Ordinal)];
    }
}
