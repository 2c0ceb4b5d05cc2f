using System.Linq;

namespace CoverPattern.Patterns.Pieces;

/// <summary>Gives the pieces of a part that is made by itself labels of their own.</summary>
internal static class Labels
{
    /// <summary>All labels with a letter before, behind the cover's own, but those of hubs.</summary>
    /// <param name="letter">The letter.</param>
    /// <param name="set">Patterns and pieces.</param>
    internal static PieceSet Before(char letter, PieceSet set) => new(
        [.. set.Patterns.Select(pattern => pattern with { Id = letter + pattern.Id, Runs = [.. pattern.Runs.Select(run => Renamed(letter, run))], Cutouts = [.. pattern.Cutouts.Select(cutout => cutout with { Run = Renamed(letter, cutout.Run) })] })],
        [.. set.Pieces.Select(piece => Renamed(letter, piece))])
    {
        Ties = [.. set.Ties.Select(tie => tie with { Arc = letter + tie.Arc })],
        ClipPatches = [.. set.ClipPatches.Select(patch => patch with { Label = letter + patch.Label, Piece = letter + patch.Piece })],
    };

    private static EdgeRun Renamed(char letter, EdgeRun run) => run with { ArcClass = letter + run.ArcClass };

    private static Piece Renamed(char letter, Piece piece) => piece with
    {
        Label = Behind(letter, piece.Label),
        Pattern = letter + piece.Pattern,
        Runs = [.. piece.Runs.Select(run => run with { Arc = letter + run.Arc, Partner = run.Partner is { } partner ? partner with { Piece = Behind(letter, partner.Piece) } : null })],
        Facets = [.. piece.Facets.Select(facet => letter + facet)],
    };

    private static string Behind(char letter, string label)
    {
        var at = label.LastIndexOf(' ') + 1;
        return label[..at] + letter + label[at..];
    }
}
