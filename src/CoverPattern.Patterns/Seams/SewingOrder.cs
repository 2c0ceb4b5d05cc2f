using System;
using System.Collections.Generic;
using System.Collections.Immutable;
using System.Linq;
using CoverPattern.Patterns.Jobs;
using CoverPattern.Patterns.Shells;

namespace CoverPattern.Patterns.Seams;

/// <summary>An order in which the seams of a cover can be sewn.</summary>
/// <remarks>
/// Small things first, while the cloth lies flat; then the uprights of each row, which end in the row's own edges; then row to row from
/// the top down, so that every one of these seams crosses uprights that are finished; the skirt; what fills openings over several pieces, once the seams
/// between these are sewn; the closing seam last. Common practice, no source.
/// </remarks>
public static class SewingOrder
{
    /// <param name="shell">The finished surface.</param>
    /// <param name="cut">The same cut up.</param>
    /// <returns>Steps that hold every line along which something is sewn, each once; none is empty.</returns>
    public static ImmutableArray<SewingStep> Of(Shell shell, Subdivision cut)
    {
        ArgumentNullException.ThrowIfNull(shell);
        ArgumentNullException.ThrowIfNull(cut);

        var panels = cut.Panels.SelectMany((panel, i) => panel.Faces.Select(face => (face, i))).ToDictionary(entry => entry.face, entry => entry.i);
        var rows = panels.Keys.GroupBy(face => panels[face])
            .ToDictionary(panel => panel.Key, panel => panel.Where(face => shell.Faces[face].Kind == FaceKind.Facet).Select(face => RowOf(shell.Faces[face].Label)).Distinct(StringComparer.Ordinal).ToArray());
        var pieces = cut.PiecesOfPatches();
        var parted = cut.Arcs.Where(arc => arc.Region is not null).GroupBy(arc => arc.Region!.Label, StringComparer.Ordinal)
            .Where(rim => rim.Select(arc => pieces[arc.First.Patch]).Distinct().Count() > 1).Select(rim => rim.Key).ToHashSet(StringComparer.Ordinal);
        return
        [
            .. cut.Arcs.Where(IsSewn).GroupBy(arc => arc.Region is { } region && parted.Contains(region.Label) ? (Kind: SewingStepKind.Openings, Row: string.Empty) : StepOf(arc, cut, panels, rows))
                .OrderBy(step => step.Key.Kind)
                .ThenByDescending(step => step.Key.Row, StringComparer.Ordinal)
                .Select(step => new SewingStep(step.Key.Kind, step.Key.Row, [.. step.Select(arc => arc.Label).Order(StringComparer.Ordinal)])),
        ];
    }

    private static bool IsSewn(Arc arc) => arc.Role == EdgeRole.Rim || (arc.Second is not null && arc.Role != EdgeRole.Fold);

    private static (SewingStepKind Kind, string Row) StepOf(Arc arc, Subdivision cut, Dictionary<int, int> panels, Dictionary<int, string[]> rows)
    {
        if (arc.Role == EdgeRole.Rim || arc.Second is not { } second)
        {
            return (SewingStepKind.Rims, string.Empty);
        }

        var (one, other) = (panels[cut.Patches[arc.First.Patch].Face], panels[cut.Patches[second.Patch].Face]);
        string[] joined = [.. rows[one].Union(rows[other]).Order(StringComparer.Ordinal)];
        return arc.MakeUp is { IsClosing: true } ? (SewingStepKind.Closing, string.Empty)
            : arc.MakeUp?.Name == RoofWish.ZipName ? (SewingStepKind.Roof, string.Empty)
            : one == other ? (SewingStepKind.WithinPieces, string.Empty)
            : joined.Length == 0 ? (SewingStepKind.WithinSkirt, string.Empty)
            : rows[one].Length == 0 || rows[other].Length == 0 ? (SewingStepKind.SkirtToRow, string.Empty)
            : joined.Length == 1 ? (SewingStepKind.WithinRow, joined[0])
            : rows[one].Length == 1 && rows[other].Length == 1 ? (SewingStepKind.BetweenRows, joined[1])
            : (SewingStepKind.AcrossRows, string.Empty);
    }

    private static string RowOf(string facet) => facet[1..facet.IndexOf('.', StringComparison.Ordinal)];
}
