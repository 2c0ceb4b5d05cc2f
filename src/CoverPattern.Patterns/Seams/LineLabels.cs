using System;
using System.Collections.Generic;
using System.Collections.Immutable;
using System.Globalization;
using System.Linq;
using CoverPattern.Geometry;
using CoverPattern.Patterns.Openings;
using CoverPattern.Patterns.Shells;

namespace CoverPattern.Patterns.Seams;

/// <summary>Names, roles and lengths of the lines of a clipped shell and of their parts.</summary>
/// <remarks>
/// Lines are counted as if nothing were taken out, so that an opening changes no other label; the parts that it leaves of one
/// line get letters: S017a, S017b.
/// </remarks>
internal sealed class LineLabels
{
    private readonly Shell shell;
    private readonly Dictionary<int, (string Label, EdgeRole Role, double Length)> whole;
    private readonly Dictionary<CellEdge, (string Letter, double Share, double Middle)> parts;

    private LineLabels(Shell shell, Dictionary<int, (string Label, EdgeRole Role, double Length)> whole, Dictionary<CellEdge, (string Letter, double Share, double Middle)> parts) =>
        (this.shell, this.whole, this.parts) = (shell, whole, parts);

    internal static LineLabels Of(Shell shell, ClippedShell surface, SeamPlan plan, ImmutableArray<FaceCell> cells)
    {
        var faces = surface.Faces.SelectMany(clip => clip.ShellEdges.Where(edge => edge >= 0)).GroupBy(edge => edge).ToDictionary(group => group.Key, group => group.Count());
        var lines = new Dictionary<int, (string Label, EdgeRole Role, double Length)>();
        var counts = new Dictionary<EdgeRole, int>();
        foreach (var (clip, edge) in surface.Faces.SelectMany(clip => clip.ShellEdges.Select((_, i) => (clip, i))))
        {
            var line = clip.ShellEdges[edge] < 0 ? -1 - clip.Face : clip.ShellEdges[edge];
            if (!lines.ContainsKey(line))
            {
                var role = line < 0 || faces[line] == 1 ? EdgeRole.Hem : plan.Edges[line].Role;
                var number = counts[role] = counts.GetValueOrDefault(role) + 1;
                var length = line < 0 ? Point2.Distance(clip.Corners[edge], clip.After(edge)) : shell.Edges[line].LengthMm * FaceClip.KeptShare(shell, line);
                lines.Add(line, (Letter(role) + number.ToString("D3", CultureInfo.InvariantCulture), role, length));
            }
        }

        return new LineLabels(shell, lines, PartsOf(surface, cells));
    }

    /// <summary>Label and role of a part; whether it lies on an edge of the cover.</summary>
    internal (string Label, EdgeRole Role, bool IsEdge) Find(CellEdge line)
    {
        var (label, role, _) = whole[line.Line];
        return (label + parts.GetValueOrDefault(line).Letter, role, role == EdgeRole.Hem);
    }

    /// <summary>The cut of the plan that a part of a line belongs to; null where it is made as the rest.</summary>
    internal SeamCut? CutAt(SeamPlan plan, CellEdge line) => line.Line >= 0 && parts.TryGetValue(line, out var part)
        ? plan.Cuts.FirstOrDefault(cut => cut.Line == line.Line && cut.From < part.Middle && part.Middle < cut.To)
        : null;

    /// <summary>Length of a part on the surface, millimetres.</summary>
    internal double LengthOf(CellEdge line) => !parts.TryGetValue(line, out var part) ? whole[line.Line].Length
        : line.Line < 0 ? part.Share * whole[line.Line].Length
        : part.Share * shell.Edges[line.Line].LengthMm;

    /// <summary>Letter and share of the whole line, for each part of a line that rims cross.</summary>
    private static Dictionary<CellEdge, (string Letter, double Share, double Middle)> PartsOf(ClippedShell surface, ImmutableArray<FaceCell> cells)
    {
        var found = new Dictionary<CellEdge, (bool IsCloth, double Share, double Middle)>();
        foreach (var cell in cells)
        {
            for (var i = 0; i < cell.Edges.Length; i++)
            {
                if (!cell.Edges[i].IsRim)
                {
                    var line = cell.Edges[i].Line;
                    var key = line < 0 ? cell.Edges[i] with { Line = -1 - cell.Face } : cell.Edges[i];
                    var length = Point2.Distance(cell.Corners[i], cell.Corners[(i + 1) % cell.Corners.Length]);
                    var clip = surface.Of(cell.Face)!;
                    var at = clip.ShellEdges.IndexOf(-1);
                    var all = line < 0 ? Point2.Distance(clip.Corners[at], clip.After(at)) : Length(surface.Ends(cell.Face, line));
                    found.TryAdd(key, (cell.Region < 0, length / all, line < 0 ? 0 : MiddleOf(surface.Ends(cell.Face, line), Point2.Between(cell.Corners[i], cell.Corners[(i + 1) % cell.Corners.Length], 0.5))));
                }
            }
        }

        var crossed = found.Keys.GroupBy(key => key.Line).Where(line => line.Count() > 1).ToArray();
        return crossed.SelectMany(line => Lettered([.. line.OrderBy(key => key.Part)], found)).ToDictionary(entry => entry.Key, entry => entry.Part);
    }

    /// <summary>Parts left of the cover get letters when there are several; those taken out keep the number of the part.</summary>
    private static IEnumerable<(CellEdge Key, (string Letter, double Share, double Middle) Part)> Lettered(CellEdge[] line, Dictionary<CellEdge, (bool IsCloth, double Share, double Middle)> found)
    {
        var left = line.Where(key => found[key].IsCloth).ToArray();
        return line.Select(key => (key, (
            !found[key].IsCloth ? string.Create(CultureInfo.InvariantCulture, $"-{key.Part}") : left.Length == 1 ? string.Empty : ((char)('a' + Array.IndexOf(left, key))).ToString(),
            found[key].Share,
            found[key].Middle)));
    }

    private static double MiddleOf((Point2 From, Point2 To) line, Point2 at) => Point2.Dot(at - line.From, line.To - line.From) / Point2.Dot(line.To - line.From, line.To - line.From);

    private static double Length((Point2 From, Point2 To) line) => Point2.Distance(line.From, line.To);

    /// <summary>S for seam, L for the line of a fold, E for the finished edge.</summary>
    private static string Letter(EdgeRole role) => role switch
    {
        EdgeRole.Seam => "S",
        EdgeRole.Fold => "L",
        EdgeRole.Hem => "E",
        _ => throw new ArgumentOutOfRangeException(nameof(role), role, "No letter for this role."),
    };
}
