using System.Collections.Generic;
using System.Linq;

namespace CoverPattern.Workshop.Tests.Sewing;

/// <summary>Finds the rim that lies where a window was ordered.</summary>
internal sealed class WindowShop
{
    private readonly TrueCover cover;
    private readonly Dictionary<string, SewnPattern> patterns;
    private readonly Dictionary<string, SewnPiece> pieces;
    private readonly Dictionary<string, PlacedPiece> placed;

    internal WindowShop(SewnFile file, SewingOrder order, TrueCover cover)
    {
        this.cover = cover;
        patterns = file.Patterns.ToDictionary(pattern => pattern.Id);
        pieces = file.Pieces.ToDictionary(piece => piece.Label);
        var shell = file.Shell();
        var lifter = new PieceLifter(order, cover, shell);
        placed = shell.Pieces.Where(piece => patterns[piece.Pattern].Cutouts.Count > 0 && IsWhole(piece)).ToDictionary(piece => piece.Label, lifter.Lift);
    }

    /// <summary>Whether nothing has bitten into the facets of a piece.</summary>
    private bool IsWhole(SewnPiece piece) => piece.Facets.Zip(patterns[piece.Pattern].Facets).All(facet => cover.Faces[facet.First].Corners.Count == facet.Second.Count);

    /// <summary>Whether the piece of a window's facet can be lifted whole: where another opening bites into it, only its rim is looked at, elsewhere.</summary>
    internal bool HasWholeHost(WindowOrder window) => pieces.Values.Any(piece => piece.Facets.Contains(window.Facet) && IsWhole(piece));

    internal SewnPiece? PieceOf(string label) => pieces.GetValueOrDefault(label);

    internal SewnPattern PatternOf(SewnPiece piece) => patterns[piece.Pattern];

    /// <summary>The rim whose middle lies within 0.05 mm of the ordered place; null when there is none.</summary>
    internal WindowHost? Host(string name, WindowOrder window)
    {
        var face = cover.Faces[window.Facet];
        var (right, up) = (face.Round, face.Outward.Cross(face.Round));
        var middle = MiddleOf(window);
        return (
            from entry in placed.Values
            where entry.Piece.Cover == name && entry.Piece.Facets.Contains(window.Facet)
            let way = entry.Placements[entry.Piece.Facets.ToList().IndexOf(window.Facet)]
            from hole in patterns[entry.Piece.Pattern].Cutouts.Select((cutout, i) => (cutout, Run: entry.Pattern.Runs.Count + i))
            where way.Lift(MiddleOf(hole.cutout.Rim)).DistanceTo(middle) <= Tolerances.OnCover
            select new WindowHost(pieces[entry.Piece.Label], hole.cutout, hole.Run, way, middle, right, up)).FirstOrDefault();
    }

    /// <summary>Where the middle of a window was ordered.</summary>
    internal SpacePoint MiddleOf(WindowOrder window)
    {
        var face = cover.Faces[window.Facet];
        return Incentre(face.Uncut) + (window.Right * face.Round) + (window.Up * face.Outward.Cross(face.Round));
    }

    /// <summary>The marks of a rim, on the cover.</summary>
    internal SpacePoint[] MarksOf(WindowHost host) =>
        [.. PatternOf(host.Piece).Notches.Where(notch => notch.Run == host.Run).Select(notch => host.Way.Lift(notch.OnSewLine))];

    /// <summary>Middle of the ring's box.</summary>
    internal static FlatPoint MiddleOf(IReadOnlyList<FlatPoint> ring) => 0.5 * new FlatPoint(
        ring.Min(corner => corner.X) + ring.Max(corner => corner.X), ring.Min(corner => corner.Y) + ring.Max(corner => corner.Y));

    /// <summary>Centre of the circle in a triangle: its corners weighed with the sides that face them.</summary>
    internal static SpacePoint Incentre(IReadOnlyList<SpacePoint> corners)
    {
        double[] facing = [corners[1].DistanceTo(corners[2]), corners[2].DistanceTo(corners[0]), corners[0].DistanceTo(corners[1])];
        return (1 / facing.Sum()) * ((facing[0] * corners[0]) + (facing[1] * corners[1]) + (facing[2] * corners[2]));
    }
}

/// <summary>A rim on its piece.</summary>
/// <param name="Piece">The piece, with all its runs.</param>
/// <param name="Cutout">The hole.</param>
/// <param name="Run">Index of the rim among the piece's runs.</param>
/// <param name="Way">How the facet lies on the cover.</param>
/// <param name="Middle">Where the window was ordered.</param>
/// <param name="Right">Right on the facet, seen from outside.</param>
/// <param name="Up">Up on the facet.</param>
internal sealed record WindowHost(SewnPiece Piece, SewnCutout Cutout, int Run, Placement Way, SpacePoint Middle, SpacePoint Right, SpacePoint Up);
