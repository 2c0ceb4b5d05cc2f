using System.Collections.Immutable;
using System.Linq;
using CoverPattern.Patterns.Jobs;

namespace CoverPattern.Patterns.Openings;

/// <summary>An opening of any outline at its place.</summary>
/// <param name="Label">Such as "O1", counted in the order of the job's entries.</param>
/// <param name="Entry">Index of its entry in the job.</param>
/// <param name="Wish">That entry.</param>
/// <param name="Region">What it takes out of the shell.</param>
/// <param name="IsCarried">Whether it has its exact size along the cloth.</param>
public sealed record LaidOpening(string Label, int Entry, OpeningWish Wish, Region Region, bool IsCarried)
{
    /// <summary>Labels of the hubs inside it, sorted.</summary>
    public ImmutableArray<string> HubsInside { get; init; } = [];

    /// <summary>Its zips, in order of its parts and along its rim.</summary>
    public ImmutableArray<ZipRun> Zips { get; init; } = [];

    /// <summary>Where its drip flap is stitched on, face by face; none without one, or where a hub is in the way.</summary>
    public ImmutableArray<SurfaceLine> Lines { get; init; } = [];

    /// <summary>The rim laid out flat.</summary>
    public required RimLine Line { get; init; }

    /// <summary>The sides of its rim in order along it, each with where it begins and ends, millimetres.</summary>
    internal ImmutableArray<(RimSide Side, double From, double To)> Sides
    {
        get
        {
            if (Line.IsClosed || Wish.Kind == OpeningKind.Window)
            {
                return [(RimSide.Whole, 0, Line.Length)];
            }

            var (right, left) = RimSides.Jambs(Line, Region);
            (RimSide Side, double From, double To)[] all = [(RimSide.Right, 0, right), (RimSide.Head, right, left), (RimSide.Left, left, Line.Length)];
            return [.. all.Where(side => side.To > side.From)];
        }
    }

    /// <summary>How what fills it meets a side of its rim.</summary>
    internal JoinKind JoinOf(RimSide side) => side switch
    {
        RimSide.Whole => Wish.Held,
        _ when Wish.Opens == OpensAt.Around => Wish.Held,
        RimSide.Right when Wish.Opens is OpensAt.Right or OpensAt.Both => Wish.Held,
        RimSide.Left when Wish.Opens is OpensAt.Left or OpensAt.Both => Wish.Held,
        _ => JoinKind.Sewn,
    };

    /// <summary>Whether what its zips hold comes off whole, for no side of it is sewn.</summary>
    internal bool ComesOff => Sides.All(side => JoinOf(side.Side) == JoinKind.Zip);

    /// <summary>How what fills it meets its rim at a place along it.</summary>
    internal JoinKind JoinAt(double along) => JoinOf(Sides.Where(side => side.From <= along).DefaultIfEmpty(Sides[0]).Last().Side);
}
