using System.Collections.Generic;

namespace CoverPattern.Workshop.Tests.Sewing;

/// <summary>Seams that are not made as ordered for the place where they lie.</summary>
internal static class MakeUpFaults
{
    internal static IEnumerable<string> Find(PlacedPiece placed, SewingOrder order, TrueClosing? closing)
    {
        for (var run = 0; run < placed.Pattern.Runs.Count; run++)
        {
            var sewn = placed.Pattern.Runs[run];
            if (sewn.Role == "seam")
            {
                var place = placed.Edges.PlaceOf(run);
                var truth = placed.Faces[place.Facet].Edges[placed.Placements[place.Facet].TrueEdgeOf[place.Edge]];
                var isRow = truth.Neighbour is not null && SewnPlan.RowOf(truth.Neighbour) != SewnPlan.RowOf(placed.Faces[place.Facet].Label);
                var wanted = order.Plan.IsRoofEdge(placed.Faces[place.Facet].Label, truth.Neighbour) ? "roof zip" : order.NameOf(isRow, closing?.Holds(placed.LineOf(run)) ?? false);
                if (sewn.MakeUp != wanted && !(order.StopsAtHubs && sewn.MakeUp == wanted + SewingOrder.SewnPlain))
                {
                    yield return $"Piece {placed.Piece.Label}, run {run} to {truth.Neighbour} is \"{sewn.MakeUp}\", ordered \"{wanted}\".";
                }
            }
            else if (sewn.MakeUp.Length > 0)
            {
                yield return $"Piece {placed.Piece.Label}, run {run} is a {sewn.Role} and yet \"{sewn.MakeUp}\".";
            }
        }
    }
}
