using System;
using System.Collections.Generic;
using System.Collections.Immutable;
using System.Linq;
using CoverPattern.Geometry;
using CoverPattern.Patterns.Seams;

namespace CoverPattern.Patterns.Pieces;

/// <summary>Divides a flap from hem to hem into two leaves along the straight line from the middle of the head to the middle of the finished edge.</summary>
internal static class Leaves
{
    /// <summary>The outlines of both leaves, each from where its first arc begins.</summary>
    /// <param name="inside">What the opening takes out; its rim is broken in the middle of the head.</param>
    /// <param name="outline">The flap's outline, counter-clockwise.</param>
    internal static (ImmutableArray<PartEdge> Right, ImmutableArray<PartEdge> Left) Of(Subdivision inside, ImmutableArray<PartEdge> outline)
    {
        bool IsHem(PartEdge edge) => inside.Arcs[edge.Arc].Role == EdgeRole.Hem;
        var count = outline.Length;

        // From the foot of the right jamb on.
        var start = Enumerable.Range(0, count).First(i => !IsHem(outline[i]) && IsHem(outline[(i + count - 1) % count]));
        ImmutableArray<PartEdge> all = [.. outline[start..], .. outline[..start]];
        var rim = all.TakeWhile(edge => !IsHem(edge)).Count();
        var head = HeadBreak(inside, all[..rim]);
        var (hem, foot) = MiddleOf(all, rim);
        var top = all[head].From;
        PartEdge On(Leaf leaf, PartEdge edge) => edge with { Leaf = leaf };
        return (
            [.. all[..head].Select(edge => On(Leaf.Right, edge)), new PartEdge(top, -1, default) { Leaf = Leaf.Right }, On(Leaf.Right, all[hem] with { From = foot }), .. all[(hem + 1)..].Select(edge => On(Leaf.Right, edge))],
            [.. all[head..(hem + 1)].Select(edge => On(Leaf.Left, edge)), new PartEdge(foot, -1, default) { Leaf = Leaf.Left }]);
    }

    /// <summary>Index of the edge with which the left half of the head begins: where the arc begins that starts nearest to half the rim between the jambs.</summary>
    private static int HeadBreak(Subdivision inside, ImmutableArray<PartEdge> rim)
    {
        var middle = inside.Arcs.First(arc => arc.Region is not null).Region!.Middle;
        return Enumerable.Range(1, rim.Length - 1).Where(i => rim[i].Arc != rim[i - 1].Arc).MinBy(i => Math.Abs(inside.Arcs[rim[i].Arc].FromMm - middle));
    }

    /// <summary>The edge of the hem that holds its middle, and the middle.</summary>
    private static (int Edge, Point2 At) MiddleOf(ImmutableArray<PartEdge> all, int first)
    {
        double LengthOf(int i) => Point2.Distance(all[i].From, all[(i + 1) % all.Length].From);
        var half = Enumerable.Range(first, all.Length - first).Sum(LengthOf) / 2;
        var edge = first;
        while (edge < all.Length - 1 && LengthOf(edge) < half)
        {
            half -= LengthOf(edge);
            edge++;
        }

        return (edge, Point2.Between(all[edge].From, all[(edge + 1) % all.Length].From, half / LengthOf(edge)));
    }

    /// <summary>What of a fold lies on a leaf.</summary>
    internal static IEnumerable<FoldLine> Within(FoldLine fold, ImmutableArray<PartEdge> leaf)
    {
        var at = Enumerable.Range(0, leaf.Length).First(i => leaf[i].Arc < 0);
        var (from, along) = (leaf[at].From, leaf[(at + 1) % leaf.Length].From - leaf[at].From);
        var (here, there) = (Point2.Cross(along, fold.From - from), Point2.Cross(along, fold.To - from));
        if (here <= 0 && there <= 0)
        {
            return [];
        }

        var crossing = Point2.Between(fold.From, fold.To, here / (here - there));
        return [here >= 0 && there >= 0 ? fold : here > 0 ? fold with { To = crossing } : fold with { From = crossing }];
    }
}
