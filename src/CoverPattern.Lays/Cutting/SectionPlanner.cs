using System;
using System.Collections.Generic;
using System.Collections.Immutable;
using System.Linq;
using CoverPattern.Geometry;
using CoverPattern.Patterns.Pieces;

namespace CoverPattern.Lays.Cutting;

/// <summary>Parts a lay into sections for a machine that is shorter, where the fewest pieces are parted.</summary>
public static class SectionPlanner
{
    // Places tried between the ends of pieces, so that a long piece can be parted where the machine's length asks; own choice, millimetres.
    private const double Step = 50;

    /// <summary>Parts a lay.</summary>
    /// <param name="lay">The lay.</param>
    /// <param name="pieces">The pieces it places, with their patterns.</param>
    /// <param name="longest">Most length of a section, millimetres; at least 200.</param>
    /// <returns>
    /// As few sections as the length allows, of these the choice that parts fewest pieces; the first begins at 0, the last ends
    /// at the lay's length.
    /// </returns>
    public static ImmutableArray<Section> Split(Lay lay, PieceSet pieces, double longest)
    {
        ArgumentNullException.ThrowIfNull(lay);
        ArgumentOutOfRangeException.ThrowIfLessThan(longest, 200);

        var spans = Spans(lay, pieces);
        var places = Places(lay, spans);
        var ends = Cheapest(places, spans, longest);
        return [.. ends.Zip(ends.Skip(1)).Select((pair, i) => Make(i + 1, pair.First, pair.Second, spans))];
    }

    /// <summary>The strokes that lie in a section, counted from its beginning; a stroke that leaves it is broken there.</summary>
    public static ImmutableArray<Stroke> Within(Section section, ImmutableArray<Stroke> strokes)
    {
        ArgumentNullException.ThrowIfNull(section);
        return [.. strokes.SelectMany(stroke => StrokeClip.Between(stroke, section.FromMm, section.ToMm))];
    }

    private static (string Piece, double From, double To)[] Spans(Lay lay, PieceSet pieces)
    {
        var patterns = LaidShapes.ById(pieces);
        var byLabel = pieces.Pieces.ToDictionary(piece => piece.Label, piece => patterns[piece.Pattern], StringComparer.Ordinal);
        return
        [
            .. lay.Placements.Select(place => (place.Piece, Box: Rings.Bounds(PieceStrokes.Of(byLabel[place.Piece], place)[^1].Points)))
                .Select(entry => (entry.Piece, entry.Box.Low.X, entry.Box.High.X)),
        ];
    }

    /// <summary>Where a section may end: where a piece begins or ends, and every step between.</summary>
    private static double[] Places(Lay lay, (string Piece, double From, double To)[] spans) =>
    [
        .. spans.SelectMany(span => new[] { span.From, span.To })
            .Concat(Enumerable.Range(1, (int)(lay.LengthMm / Step)).Select(i => i * Step))
            .Where(x => x > 0 && x < lay.LengthMm)
            .Concat([0, lay.LengthMm])
            .Distinct()
            .Order(),
    ];

    /// <summary>Shortest path over the places: first fewest sections, then fewest parted pieces, then nearest to the front.</summary>
    private static double[] Cheapest(double[] places, (string Piece, double From, double To)[] spans, double longest)
    {
        var parted = places.Select(x => spans.Count(span => span.From < x && x < span.To)).ToArray();
        var best = new (int Sections, int Parted, int Before)[places.Length];
        for (var i = 1; i < places.Length; i++)
        {
            best[i] = (int.MaxValue, 0, -1);
            for (var j = 0; j < i; j++)
            {
                var cost = (best[j].Sections + 1, best[j].Parted + parted[i], j);
                if (places[i] - places[j] <= longest && best[j].Sections < int.MaxValue && (cost.Item1, cost.Item2).CompareTo((best[i].Sections, best[i].Parted)) < 0)
                {
                    best[i] = cost;
                }
            }
        }

        var ends = new List<double>();
        for (var i = places.Length - 1; i > 0; i = best[i].Before)
        {
            ends.Add(places[i]);
        }

        ends.Add(0);
        ends.Reverse();
        return [.. ends];
    }

    private static Section Make(int number, double from, double to, (string Piece, double From, double To)[] spans) => new(
        number,
        from,
        to,
        [.. spans.Where(span => span.From >= from && span.To <= to).Select(span => span.Piece)],
        [.. spans.Where(span => span.From < to && span.To > from && (span.From < from || span.To > to)).Select(span => span.Piece)]);
}
