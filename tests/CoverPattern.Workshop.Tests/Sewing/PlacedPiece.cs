using System.Collections.Generic;
using System.Linq;

namespace CoverPattern.Workshop.Tests.Sewing;

/// <summary>A piece folded and laid on the cover.</summary>
/// <param name="Piece">The piece.</param>
/// <param name="Pattern">Its pattern.</param>
/// <param name="Edges">Where runs and folds are.</param>
/// <param name="Faces">The true face of each of its facets.</param>
/// <param name="Placements">How each facet is laid on it.</param>
internal sealed record PlacedPiece(
    SewnPiece Piece, SewnPattern Pattern, PatternEdges Edges, IReadOnlyList<TrueFace> Faces, IReadOnlyList<Placement> Placements)
{
    /// <summary>The true face that a run belongs to.</summary>
    internal TrueFace FaceOf(int run) => Faces[Edges.PlaceOf(run).Facet];

    /// <summary>A point of a run, in space.</summary>
    internal SpacePoint Lift(int run, FlatPoint point) => Placements[Edges.PlaceOf(run).Facet].Lift(point);

    /// <summary>A run in space, as it goes counter-clockwise round the piece seen from outside.</summary>
    internal (SpacePoint From, SpacePoint To) LineOf(int run)
    {
        var (from, to) = PatternEdges.Ends(Pattern, Pattern.Runs[run]);
        return Piece.Mirrored ? (Lift(run, to), Lift(run, from)) : (Lift(run, from), Lift(run, to));
    }

    /// <summary>Whether a run begins and ends over a hub, in the pattern's direction.</summary>
    internal (bool AtStart, bool AtEnd) HubEndsOf(int run)
    {
        var (facet, edge) = Edges.PlaceOf(run);
        var truth = Faces[facet].Edges[Placements[facet].TrueEdgeOf[edge]];
        return Piece.Mirrored ? (truth.ToHub, truth.FromHub) : (truth.FromHub, truth.ToHub);
    }

    /// <summary>The notches of a run in space, in the direction of <see cref="LineOf"/>.</summary>
    internal IReadOnlyList<SpacePoint> NotchesOf(int run)
    {
        var start = LineOf(run).From;
        return [.. Pattern.Notches.Where(notch => notch.Run == run).Select(notch => Lift(run, notch.OnSewLine)).OrderBy(start.DistanceTo)];
    }
}
