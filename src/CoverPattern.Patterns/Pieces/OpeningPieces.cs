using System;
using System.Collections.Generic;
using System.Collections.Immutable;
using System.Globalization;
using System.Linq;
using CoverPattern.Geometry;
using CoverPattern.Patterns.Openings;
using CoverPattern.Patterns.Seams;

namespace CoverPattern.Patterns.Pieces;

/// <summary>Makes the clear sheets that are sewn in behind openings: what the opening takes out, laid flat over its folds, and the lap.</summary>
public static class OpeningPieces
{
    /// <summary>The sheets of one cover.</summary>
    /// <param name="openings">The openings laid; their regions stand in the order of the subdivision's insides.</param>
    /// <param name="cut">The surface cut up.</param>
    /// <returns>One piece an opening with a sheet, named for it, such as "O1p"; its rim's arcs are those of the cover.</returns>
    public static ImmutableArray<AddedPiece> Make(OpeningLaying openings, Subdivision cut)
    {
        ArgumentNullException.ThrowIfNull(openings);
        ArgumentNullException.ThrowIfNull(cut);
        return
        [
            .. openings.Openings.Select((opening, i) => (opening, Inside: cut.Insides[openings.Windows.Length + i]))
                .Where(entry => entry.opening.Wish.Sheet is not null)
                .SelectMany(entry => PanelFlattener.Flatten(entry.Inside).Select((panel, i) => Sheet(entry.opening, entry.Inside, panel, i))),
        ];
    }

    private static AddedPiece Sheet(LaidOpening opening, Subdivision inside, Panel panel, int number)
    {
        var turn = Upright(opening.Region, inside, panel);
        var label = opening.Label + "p" + (number == 0 ? string.Empty : string.Create(CultureInfo.InvariantCulture, $"-{number + 1}"));
        var edges = RunsOf(panel.Outline).Select(run => new AddedEdge(inside.Arcs[run.Arc].Label, IsSecond: true, inside.Arcs[run.Arc].Role, opening.Wish.Lap.Millimetres) { Steps = run.Steps });
        return new AddedPiece(label, opening.Wish.Sheet!, PieceKind.Pane, turn.Apply(panel.Outline.Select(edge => edge.From)), [.. edges], [])
        {
            Folds = [.. panel.Folds.Select(fold => Line(inside, panel, fold, turn))],
        };
    }

    /// <summary>Arcs round the sheet in order, each with the number of its edges.</summary>
    internal static IEnumerable<(int Arc, int Steps)> RunsOf(ImmutableArray<PanelEdge> outline)
    {
        for (var (first, count) = (0, 0); first < outline.Length; first += count)
        {
            count = outline.Skip(first).TakeWhile(edge => edge.Arc == outline[first].Arc).Count();
            yield return (outline[first].Arc, count);
        }
    }

    /// <summary>The turn that brings the opening's up to +y.</summary>
    internal static RigidMap Upright(Region region, Subdivision inside, Panel panel)
    {
        var at = Enumerable.Range(0, panel.Patches.Length).Where(i => inside.Patches[panel.Patches[i]].Face == region.Centre.Face).DefaultIfEmpty(0).First();
        var map = panel.FlatMaps[at] with { Shift = default };
        var up = map.Apply(region.Up);
        return new RigidMap(up.Y, up.X, default, Mirrored: false);
    }

    internal static FoldLine Line(Subdivision inside, Panel panel, int fold, RigidMap turn)
    {
        var side = inside.Arcs[fold].First;
        var map = turn.After(panel.FlatMaps[panel.Patches.IndexOf(side.Patch)]);
        var corners = inside.Patches[side.Patch].Corners;
        return new FoldLine(map.Apply(corners[side.Edge]), map.Apply(corners[(side.Edge + 1) % corners.Length]));
    }
}
