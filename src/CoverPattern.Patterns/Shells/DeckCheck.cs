using System;
using System.Collections.Generic;
using System.Collections.Immutable;
using System.Linq;
using CoverPattern.Geometry;
using CoverPattern.Patterns.Frames;
using CoverPattern.Patterns.Jobs;

namespace CoverPattern.Patterns.Shells;

/// <summary>Refuses what cannot be true of deck, ground and skirt together.</summary>
public static class DeckCheck
{
    // A corner line flatter than this (its fall along itself; 30 degrees) would make the skirt more than twice as long as it is high.
    private const double LeastFall = 0.5;

    // A lower edge shorter than this is no edge: the corner lines nearly meet, millimetres.
    private const double LeastEdge = 20;

    // More labels than this are not listed one by one.
    private const int MostListed = 12;

    /// <summary>All that is wrong; when statements contradict each other, or labels are wrong, nothing is measured yet.</summary>
    /// <param name="job">Skirt, deck, stand-off and ease are read.</param>
    /// <param name="frame">Its frame.</param>
    public static ImmutableArray<Fault> Faults(Job job, Frame frame)
    {
        ArgumentNullException.ThrowIfNull(job);
        ArgumentNullException.ThrowIfNull(frame);

        ImmutableArray<Fault> said =
        [
            .. DeckWords.Contradictions(job),
            .. Levels(job.Deck, frame),
            .. Labels("deck.heights", job.Deck.Heights, frame),
            .. Labels("deck.ground", job.Deck.Ground, frame),
        ];
        return said.IsEmpty ? [.. Measures(job, frame)] : said;
    }

    private static IEnumerable<Fault> Levels(DeckWish deck, Frame frame)
    {
        var levels = HemHeights.Levels(frame);
        if (deck.Raise is { } raise && levels.Length != 2)
        {
            yield return new Fault(
                "deck.raise",
                raise.Typed,
                FormattableString.Invariant($"a frame whose base hubs stand at two levels; these stand at {levels.Length}. State each under deck.heights, or leave it out."));
        }
    }

    private static IEnumerable<Fault> Labels(string place, ImmutableArray<HubHeight> heights, Frame frame)
    {
        if (heights.IsEmpty)
        {
            yield break;
        }

        var known = frame.Base.Select(hub => frame.Hubs[hub].Label).ToArray();
        foreach (var height in heights.Where(height => !known.Contains(height.Hub, StringComparer.Ordinal)))
        {
            yield return new Fault(PlaceOf(place, height.Hub), "an unknown base hub", $"base hubs of this frame: {known[0]} to {known[^1]}, {known.Length} in all, counter-clockwise from the front");
        }

        var missing = known.Where(hub => !heights.Any(height => string.Equals(height.Hub, hub, StringComparison.Ordinal))).ToArray();
        if (missing.Length > 0)
        {
            yield return new Fault(place, "nothing for " + Listed(missing), FormattableString.Invariant($"a height for each of the {known.Length} base hubs"));
        }
    }

    private static IEnumerable<Fault> Measures(Job job, Frame frame)
    {
        var moved = StandOff.Move(frame, job.StandOff.Millimetres);
        var heights = HemHeights.Of(job, frame, moved);
        return Steep(job, frame, moved, heights).Concat(Buried(job, frame, heights)).Concat(Flat(job, frame, moved, heights));
    }

    /// <summary>A chord cannot rise by more than its own length.</summary>
    private static IEnumerable<Fault> Steep(Job job, Frame frame, ImmutableArray<Point3> moved, HemHeights heights)
    {
        foreach (var hub in frame.Base.Where(_ => job.Deck.IsMeasured))
        {
            var next = frame.Base[(hub + 1) % frame.Base.Length];
            var chord = Point3.Distance(moved[hub], moved[next]);
            var rise = moved[next].Z + heights.Raised[next] - moved[hub].Z - heights.Raised[hub];
            if (Math.Abs(rise) >= chord)
            {
                var stated = job.Deck.Heights.FirstOrDefault(height => string.Equals(height.Hub, frame.Hubs[next].Label, StringComparison.Ordinal));
                yield return new Fault(
                    stated is null ? "deck.raise" : PlaceOf("deck.heights", stated.Hub),
                    stated?.Height.Typed ?? job.Deck.Raise!.Value.Typed,
                    FormattableString.Invariant($"less than {chord:0} mm above or below its neighbour {frame.Hubs[hub].Label}, which is the length of the chord between them; {Math.Abs(rise):0} mm are asked. Measure again."));
            }
        }
    }

    /// <summary>Somewhere the finished edge must hang below the cover, and nowhere above its second ring of hubs.</summary>
    private static IEnumerable<Fault> Buried(Job job, Frame frame, HemHeights heights)
    {
        if (DeckWords.Stated(job.Deck) is not { } place)
        {
            yield break;
        }

        var highest = frame.Base.Max(hub => heights.AboveEdge[hub]);
        var cut = frame.Hubs.Skip(frame.Base.Length).Select((hub, i) => (hub.Label, Above: heights.AboveEdge[i + frame.Base.Length])).MinBy(entry => entry.Above);
        if (highest <= 0)
        {
            yield return new Fault(place, FormattableString.Invariant($"the finished edge is above all base hubs of the cover, by {-highest:0.#} mm at least"), "heights by which some base hub stands above the finished edge; otherwise the cover has no skirt and its facets would be cut off all round");
        }
        else if (cut.Above < 0)
        {
            yield return new Fault(place, FormattableString.Invariant($"the finished edge is {-cut.Above:0.#} mm above {cut.Label}"), "an edge below the second ring of hubs");
        }
    }

    private static IEnumerable<Fault> Flat(Job job, Frame frame, ImmutableArray<Point3> moved, HemHeights heights)
    {
        if (job.Skirt.Shape != SkirtShape.Slope)
        {
            yield break;
        }

        var hanger = new SkirtHanger(ShellFitter.Mesh(job, frame, moved, heights), frame, heights, SkirtShape.Slope);
        var hung = frame.Base.Where(hub => heights.AboveEdge[hub] > 0).ToArray();
        var flat = hung.Where(hub => !(heights.Descent(hanger.Down(hub)) >= LeastFall)).ToArray();
        if (flat.Length > 0)
        {
            yield return Shape(frame.Hubs[flat[0]].Label, "the facets there lie flatter than 30 degrees where they meet");
        }
        else if (hung.FirstOrDefault(hub => Edge(frame, moved, hanger, hub) < LeastEdge, -1) is >= 0 and var narrow)
        {
            yield return Shape(frame.Hubs[narrow].Label, "the corner lines nearly meet above the finished edge");
        }
    }

    private static double Edge(Frame frame, ImmutableArray<Point3> moved, SkirtHanger hanger, int hub)
    {
        var next = frame.Base[(hub + 1) % frame.Base.Length];
        return Point3.Dot(hanger.FootOf(next) - hanger.FootOf(hub), (moved[next] - moved[hub]).Unit());
    }

    private static Fault Shape(string hub, string why) => new(
        "skirt.shape", "\"slope\"", $"facets steep enough to be carried on to the finished edge; at {hub} {why}. Take \"vertical\", or less drop.");

    private static string PlaceOf(string place, string hub) => $"{place}[\"{hub}\"]";

    private static string Listed(string[] labels) => string.Join(", ", labels.Take(MostListed)) + (labels.Length > MostListed ? ", ..." : string.Empty);
}
