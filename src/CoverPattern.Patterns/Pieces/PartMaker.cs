using System;
using System.Collections.Generic;
using System.Collections.Immutable;
using System.Globalization;
using System.Linq;
using CoverPattern.Patterns.Jobs;
using CoverPattern.Patterns.Openings;
using CoverPattern.Patterns.Seams;

namespace CoverPattern.Patterns.Pieces;

/// <summary>Makes the parts of one opening: what it takes out, laid flat, every edge with the cloth that its join asks for.</summary>
internal sealed class PartMaker
{
    private readonly Job job;
    private readonly LaidOpening opening;
    private readonly Subdivision inside;
    private readonly ImmutableArray<Panel> panels;

    /// <param name="job">Hem and notions are read.</param>
    /// <param name="opening">The opening.</param>
    /// <param name="inside">What it takes out, cut up.</param>
    internal PartMaker(Job job, LaidOpening opening, Subdivision inside) =>
        (this.job, this.opening, this.inside, panels) = (job, opening, inside, PanelFlattener.Flatten(inside));

    internal IEnumerable<AddedPiece> Make()
    {
        var parts = OpeningPart.Of(opening.Wish);
        ImmutableArray<AddedPiece> made =
        [
            .. opening.Wish.Held == JoinKind.Ring
                ? RingPieces.Make(job, opening, parts, InsidePanel.Upright(opening.Region, inside, panels[0]).Apply(panels[0].Outline.Select(edge => edge.From)))
                : parts.SelectMany(part => panels.SelectMany((panel, number) => Pieces(part, panel, number))),
        ];
        var foot = inside.Arcs.Where(arc => arc.Role == EdgeRole.Hem).Sum(arc => arc.LengthMm);
        var leaf = made.SelectMany(piece => piece.Edges.Select((edge, i) => edge.Arc == opening.Label + "m" ? piece.LengthOf(i) : 0)).DefaultIfEmpty(0).Max();
        return [.. made, .. StripPieces.Make(job, opening, foot, leaf), .. HoodPieces.Make(job, opening)];
    }

    private IEnumerable<AddedPiece> Pieces(OpeningPart part, Panel panel, int number)
    {
        var turn = InsidePanel.Upright(opening.Region, inside, panel);
        var label = opening.Label + part.Letter + (number == 0 ? string.Empty : string.Create(CultureInfo.InvariantCulture, $"-{number + 1}"));
        ImmutableArray<PartEdge> outline = [.. panel.Outline.Select(edge => new PartEdge(turn.Apply(edge.From), edge.Arc, edge.Side))];
        ImmutableArray<FoldLine> folds = [.. panel.Folds.Select(fold => InsidePanel.Fold(inside, panel, fold, turn))];
        if (opening.Wish.Opens != OpensAt.Middle || opening.Line.IsClosed)
        {
            return [Piece(part, label, outline, folds)];
        }

        var (right, left) = Leaves.Of(inside, outline);
        return
        [
            Piece(part, label + "R", right, [.. folds.SelectMany(fold => Leaves.Within(fold, right))]),
            Piece(part, label + "L", left, [.. folds.SelectMany(fold => Leaves.Within(fold, left))]),
        ];
    }

    private AddedPiece Piece(OpeningPart part, string label, ImmutableArray<PartEdge> outline, ImmutableArray<FoldLine> folds) =>
        new(label, part.Cloth, part.Kind, [.. outline.Select(edge => edge.From)], [.. RunsOf(outline).Select(run => Edge(part, outline[run.First]) with { Steps = run.Steps })], [])
        {
            Folds = folds,
        };

    /// <summary>Arcs round a part in order, each with the number of its edges; of a hem every edge is a run.</summary>
    private IEnumerable<(int First, int Steps)> RunsOf(ImmutableArray<PartEdge> outline)
    {
        for (var (first, count) = (0, 0); first < outline.Length; first += count)
        {
            var arc = outline[first].Arc;
            count = arc >= 0 && inside.Arcs[arc].Role == EdgeRole.Rim ? outline.Skip(first).TakeWhile(edge => edge.Arc == arc).Count() : 1;
            yield return (first, count);
        }
    }

    private AddedEdge Edge(OpeningPart part, PartEdge edge)
    {
        if (edge.Arc < 0)
        {
            // The line between two leaves: the right leaf runs down it from the head, as what fills a rim runs along that.
            return new AddedEdge(opening.Label + "m" + (part.IsFirst ? string.Empty : part.Letter), edge.Leaf == Leaf.Right, EdgeRole.Rim, BesideZip(part));
        }

        var arc = inside.Arcs[edge.Arc];
        var label = arc.Label + (edge.Leaf == Leaf.None || arc.Role != EdgeRole.Hem ? string.Empty : edge.Leaf == Leaf.Right ? "R" : "L") + (part.IsFirst ? string.Empty : part.Letter);
        return arc.Role switch
        {
            EdgeRole.Rim => new AddedEdge(label, IsSecond: true, EdgeRole.Rim, AtRim(part, part.IsFixed ? JoinKind.Sewn : opening.JoinAt((arc.FromMm + (arc.LengthMm / 2)) % opening.Line.Length))) { Places = arc.Marks },
            EdgeRole.Seam => SeamEdge(arc, label, edge.Side),
            EdgeRole.Hem when part.IsTurned => new AddedEdge(label, IsSecond: false, EdgeRole.Hem, job.Hem.Allowance),
            EdgeRole.Hem => new AddedEdge(label, IsSecond: false, EdgeRole.Raw, 0),
            _ => throw new ArgumentOutOfRangeException(nameof(edge), arc.Role, "No edge of a part has this role."),
        };
    }

    private static AddedEdge SeamEdge(Arc arc, string label, PatchSide side)
    {
        var which = arc.First == side ? EdgeSide.Over : EdgeSide.Under;
        return new AddedEdge(label, arc.First != side, EdgeRole.Seam, Allowance.OfSeam(arc.MakeUp!, which)) { MakeUp = arc.MakeUp, Side = which };
    }

    /// <summary>Cloth of a part beyond the rim: a lap where it lies behind, cloth turned back beside teeth; sheet and mesh end short of the teeth in a binding.</summary>
    private double AtRim(OpeningPart part, JoinKind join) => join switch
    {
        JoinKind.Zip => BesideZip(part),
        JoinKind.HookLoop when part.IsTurned => opening.Wish.Lap.Millimetres + opening.Wish.TurnUnder.Millimetres,
        _ => opening.Wish.Lap.Millimetres,
    };

    private double BesideZip(OpeningPart part) => part.IsTurned ? opening.Wish.TurnUnder.Millimetres : -job.Notions.ZipChain.Millimetres / 2;
}
