using System;
using System.Collections.Generic;
using System.Collections.Immutable;
using System.Linq;
using CoverPattern.Patterns.Pieces;

namespace CoverPattern.Files.Reports;

/// <summary>What is told of each pattern in words.</summary>
internal sealed class PatternFacts
{
    private readonly ILookup<string, Piece> users;
    private readonly ILookup<string, Piece> different;
    private readonly ImmutableDictionary<string, Pattern> patternOf;
    private readonly bool isFirstOnly;

    /// <param name="set">Patterns and pieces.</param>
    /// <param name="lengths">How lengths of edges are printed.</param>
    public PatternFacts(PieceSet set, SideLengths lengths)
    {
        (Set, Lengths) = (set, lengths);
        var shown = Covers.Different(set);
        var byId = set.Patterns.ToDictionary(pattern => pattern.Id, StringComparer.Ordinal);
        users = set.Pieces.ToLookup(piece => piece.Pattern, StringComparer.Ordinal);
        different = shown.ToLookup(piece => piece.Pattern, StringComparer.Ordinal);
        patternOf = set.Pieces.ToImmutableDictionary(piece => piece.Label, piece => byId[piece.Pattern], StringComparer.Ordinal);
        isFirstOnly = shown.Length < set.Pieces.Length;
    }

    public PieceSet Set { get; }

    public SideLengths Lengths { get; }

    /// <summary>What stands along each edge: its length and class, or the partner where the pattern is one piece of a cover.</summary>
    public ImmutableArray<string> Sides(Pattern pattern)
    {
        var only = Only(pattern);
        return [.. pattern.Runs.Select((run, i) => $"{Lengths.Of(run)} {(only?.Runs[i].Partner is { } partner ? Side(only.Runs[i], partner) : Words.Short(run))}")];
    }

    /// <summary>A row for each edge, then for each hole.</summary>
    public IEnumerable<string[]> Edges(Pattern pattern) =>
    [
        .. pattern.AllRuns.Select((run, i) => Edge(pattern, i, run, Name(pattern, i))),
    ];

    /// <summary>Marks inside the piece, each kind once.</summary>
    public static IEnumerable<string> Marks(Pattern pattern) => pattern.Drills.Select(drill => drill.Purpose)
        .Concat(pattern.Lines.Select(line => line.Purpose))
        .GroupBy(purpose => purpose, StringComparer.Ordinal)
        .Select(marks => $"Drawn mark, never pierced: {marks.Key}{(marks.Count() == 1 ? string.Empty : $", {Printed.Count(marks.Count())} times")}");

    /// <summary>The partners of its edges; empty where it has none, and where several pieces of a cover have this shape.</summary>
    public string SewnTo(Pattern pattern)
    {
        (PieceRun Run, int Index)[] joined = [.. (Only(pattern)?.Runs ?? []).Select((run, i) => (run, i)).Where(entry => entry.run.Partner is not null)];
        return joined.Length == 0
            ? string.Empty
            : "Sewn to: " + string.Join("; ", joined.Select(entry => $"{Name(pattern, entry.Index)}: {Joined(entry.Run)}")) + ".";
    }

    /// <summary>The pieces of this shape; those of one cover when all are alike.</summary>
    public string Users(Pattern pattern)
    {
        var labels = (isFirstOnly ? different : users)[pattern.Id]
            .Select(piece => (Label: isFirstOnly ? Covers.PlaceOf(piece.Label) : piece.Label, piece.Mirrored)).ToArray();
        var plain = labels.Where(piece => !piece.Mirrored).Select(piece => piece.Label).ToArray();
        var mirrored = labels.Where(piece => piece.Mirrored).Select(piece => piece.Label).ToArray();
        return (isFirstOnly ? "Pieces of each cover: " : "Pieces: ")
            + string.Join("; mirrored: ", new[] { LabelRanges.List(plain), LabelRanges.List(mirrored) }.Where((_, i) => i == 0 ? plain.Length > 0 : mirrored.Length > 0))
            + (plain.Length == 0 ? " (mirrored)" : string.Empty);
    }

    /// <summary>What an edge of a piece is joined to, in words.</summary>
    public string Joined(PieceRun run) => run.Partner is null
        ? Printed.Word(run.Role)
        : $"{run.Arc} \u2192 {Covers.PlaceOf(run.Partner.Piece)} {Name(patternOf[run.Partner.Piece], run.Partner.Run)}";

    /// <summary>An edge by its corners, or by what it is all round.</summary>
    public static string Name(Pattern pattern, int run) => Words.Edge(pattern.AllRuns[run]);

    /// <summary>The one piece of a cover that has this pattern; null when there are several.</summary>
    private Piece? Only(Pattern pattern) => different[pattern.Id].Take(2).ToArray() is [var piece] ? piece : null;

    private static string Side(PieceRun run, PartnerRun partner) => $"{run.Arc} to {Covers.PlaceOf(partner.Piece)}";

    private string[] Edge(Pattern pattern, int index, EdgeRun run, string name) =>
        [name, Words.Role(run), run.ArcClass, Lengths.Of(run), Lengths.Ruler.Allowance(run.AllowanceMm), Notches(pattern, index, run)];

    private string Notches(Pattern pattern, int index, EdgeRun run)
    {
        var notches = pattern.Notches.Where(notch => notch.Run == index).ToArray();
        return notches.Length == 0
            ? "none"
            : $"{string.Join(", ", notches.Select(notch => Lengths.Ruler.Of(notch.AtMm)))} from {(run.IsClosed ? "the right" : Printed.Count(run.From + 1))}, {string.Join(" and ", notches.Select(notch => Printed.Word(notch.Form)).Distinct())}";
    }
}
