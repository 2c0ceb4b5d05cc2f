using System.Linq;
using CoverPattern.Patterns.Pieces;
using CoverPattern.Patterns.Seams;

namespace CoverPattern.Files.Reports;

/// <summary>Edges in words.</summary>
internal static class Words
{
    /// <summary>What stands beside the length along a side: the class shared by partner edges, or what the edge is for.</summary>
    public static string Short(EdgeRun run) => run.Role == EdgeRole.Seam
        ? run.ArcClass + Side(run)
        : Printed.Word(run.Role);

    /// <summary>What an edge is for, with its side.</summary>
    public static string Role(EdgeRun run) => Printed.Word(run.Role) + Side(run);

    /// <summary>An edge by the numbers of its corners, such as "1-2".</summary>
    public static string Edge(EdgeRun run) => !run.IsClosed ? Corners(run.From, run.To) : run.Role == EdgeRole.Rim ? "rim" : "all round";

    /// <summary>What a piece is on the cover; drip flaps and thresholds are strips too.</summary>
    public static string Kind(PieceKind kind) => kind switch
    {
        PieceKind.CoverStrip => "strip",
        PieceKind.Pad => "insulation pad",
        PieceKind.RoofFlap => "flap of the roof",
        _ => string.Concat(kind.ToString().Select((letter, i) => char.IsUpper(letter) ? (i == 0 ? string.Empty : " ") + char.ToLowerInvariant(letter) : letter.ToString())),
    };

    public static string Corners(int from, int to) => Printed.Count(from + 1) + "-" + Printed.Count(to + 1);

    private static string Side(EdgeRun run) => run.Side == EdgeSide.None ? string.Empty : " " + Printed.Word(run.Side);
}
