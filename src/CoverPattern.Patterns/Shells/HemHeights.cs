using System;
using System.Collections.Generic;
using System.Collections.Immutable;
using System.Linq;
using CoverPattern.Geometry;
using CoverPattern.Patterns.Frames;
using CoverPattern.Patterns.Jobs;

namespace CoverPattern.Patterns.Shells;

/// <summary>How high every hub of the cover stands over the finished lower edge, from model, measured heights, deck and ground.</summary>
/// <remarks>
/// A base hub of the cover stands over its frame hub by what the stand-off moves it; the frame hub's own height over the deck is
/// the model's, or was measured. Hubs above the base take the mean correction of the base hubs they share a facet with, or of
/// all: their heights only tell where a facet that dips below the edge is cut.
/// </remarks>
internal sealed class HemHeights
{
    // A border or strip lower than this is neither cut nor sewn: a millimetre is the width of a chalk line.
    private const double LeastStrip = 1;

    // Base hubs nearer in height than this stand at one level, millimetres.
    private const double OneLevel = 0.5;

    private readonly Job job;
    private readonly ImmutableArray<Point3> moved;

    private HemHeights(Job job, Frame frame, ImmutableArray<Point3> moved)
    {
        (this.job, this.moved) = (job, moved);
        Raised = [.. frame.Base.Select(hub => Stated(job.Deck, frame, hub) - frame.Hubs[hub].Position.Z)];
        var local = frame.Base.Select((hub, i) => Raised[i] - GroundBelow(job.Deck, frame, hub)).ToArray();
        var deck = Deck(frame);
        ImmutableArray<double> steps = [.. Steps(frame, local).Zip(moved, (step, at) => step + Tilt(at) - deck)];
        var isChords = job.Skirt.Shape == SkirtShape.Chords;
        ImmutableArray<double> wished = isChords ? AboveChords(frame) : [.. moved.Zip(steps, (at, step) => at.Z + step + Drop)];
        Lifted = local.Any(step => step != 0) ? 0 : frame.Base.Select(hub => wished[hub]).Where(IsOnEdge).DefaultIfEmpty(0).Min();
        AboveEdge = [.. wished.Select(height => height - Lifted)];
        EdgeZ = [.. moved.Select((at, hub) => isChords ? at.Z - Drop : -(steps[hub] + Drop)).Select(z => z + Lifted)];
    }

    /// <summary>How much higher the whole finished edge lies than wished, millimetres: where base hubs of the model's heights would end within 1 mm of it, it runs through the lowest of them.</summary>
    internal double Lifted { get; }

    /// <summary>For each base hub how much higher it was measured over the others than the model has it, millimetres; 0 when nobody measured.</summary>
    internal ImmutableArray<double> Raised { get; }

    /// <summary>For every hub of the cover its height over the finished edge before ease, millimetres; negative below it.</summary>
    internal ImmutableArray<double> AboveEdge { get; }

    /// <summary>For every hub the z of the finished edge straight below it, in the model's coordinates.</summary>
    internal ImmutableArray<double> EdgeZ { get; }

    private double Drop => job.Skirt.Drop.Millimetres;

    /// <summary>Whether a hub so far over the finished edge counts as on it.</summary>
    internal static bool IsOnEdge(double height) => Math.Abs(height) < LeastStrip;

    internal static HemHeights Of(Job job, Frame frame, ImmutableArray<Point3> moved) => new(job, frame, moved);

    /// <summary>How much faster than its own z a step comes nearer to a tilted deck: the step's way down, over the deck.</summary>
    internal double Descent(Point3 step) => -(step.Z + Tilt(step));

    /// <summary>Levels of the base hubs by the model, lowest first, millimetres.</summary>
    internal static ImmutableArray<double> Levels(Frame frame)
    {
        var levels = ImmutableArray.CreateBuilder<double>();
        foreach (var z in frame.Base.Select(hub => frame.Hubs[hub].Position.Z).Order())
        {
            if (levels.Count == 0 || z - levels[^1] > OneLevel)
            {
                levels.Add(z);
            }
        }

        return levels.ToImmutable();
    }

    /// <summary>Whether a base hub stands at the lowest level by the model.</summary>
    internal static bool IsLow(Frame frame, int hub) => frame.Hubs[hub].Position.Z <= OneLevel;

    /// <summary>Height of a frame hub as measured over the others or the deck, else as the model has it.</summary>
    private static double Stated(DeckWish deck, Frame frame, int hub)
    {
        if (deck.Raise is { } raise)
        {
            return IsLow(frame, hub) ? 0 : raise.Millimetres;
        }

        return deck.Heights.IsEmpty ? frame.Hubs[hub].Position.Z : Find(deck.Heights, frame, hub);
    }

    private static double GroundBelow(DeckWish deck, Frame frame, int hub) => deck.Ground.IsEmpty ? 0 : Find(deck.Ground, frame, hub);

    private static double Find(ImmutableArray<HubHeight> heights, Frame frame, int hub) =>
        heights.Single(height => string.Equals(height.Hub, frame.Hubs[hub].Label, StringComparison.Ordinal)).Height.Millimetres;

    /// <summary>How much a tilted deck lies below its middle at a place, millimetres.</summary>
    private double Tilt(Point3 at)
    {
        if (job.Deck.Tilt is not { } tilt)
        {
            return 0;
        }

        var angle = tilt.TowardsDegrees * Math.PI / 180;
        return tilt.Fall * ((at.X * Math.Cos(angle)) + (at.Y * Math.Sin(angle)));
    }

    /// <summary>z of the deck at its middle: so that the base hubs stand over it as the datum says.</summary>
    private double Deck(Frame frame)
    {
        if (!job.Deck.Heights.IsEmpty)
        {
            return 0;
        }

        var over = frame.Base.Select(hub => Stated(job.Deck, frame, hub) + Tilt(frame.Hubs[hub].Position)).ToArray();
        return job.Deck.Plinth is { } plinth ? over.Min() - plinth.Millimetres
            : job.Deck.Datum == DeckDatum.Mean ? over.Average()
            : over.Min();
    }

    private static IEnumerable<double> Steps(Frame frame, double[] local)
    {
        var beside = frame.Hubs.Select(_ => new List<double>()).ToArray();
        foreach (var facet in frame.Facets)
        {
            foreach (var (upper, low) in facet.Hubs.SelectMany(upper => facet.Hubs.Where(hub => hub < local.Length).Select(low => (upper, low))))
            {
                beside[upper].Add(local[low]);
            }
        }

        return frame.Hubs.Select((_, hub) => hub < local.Length ? local[hub] : beside[hub].DefaultIfEmpty(local.Average()).Average());
    }

    /// <summary>With an edge parallel to the base chords nothing of the facets is cut.</summary>
    private ImmutableArray<double> AboveChords(Frame frame)
    {
        var lowest = frame.Base.Min(hub => moved[hub].Z);
        return [.. moved.Select((at, hub) => Drop + (hub < frame.Base.Length ? 0 : Math.Max(1, at.Z - lowest)))];
    }
}
