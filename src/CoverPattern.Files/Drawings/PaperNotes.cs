using System;
using System.Collections.Generic;
using System.Collections.Immutable;
using System.Linq;
using CoverPattern.Files.Reports;
using CoverPattern.Geometry;
using CoverPattern.Patterns.Jobs;

namespace CoverPattern.Files.Drawings;

/// <summary>What drawings must know of their job: values that nobody has confirmed, and how its shop measures.</summary>
/// <param name="Unconfirmed">One line a value: place in the job file and value.</param>
public sealed record PaperNotes(ImmutableArray<string> Unconfirmed)
{
    private const double TextHeight = 12;
    private const double LineStep = 20;
    private const double Gap = 60;

    /// <summary>Whether the shop measures in inches and feet.</summary>
    public bool IsInInches { get; init; }

    /// <summary>Nothing to say.</summary>
    public static PaperNotes None { get; } = new([]);

    /// <summary>The assumptions of a job that its list of confirmed places does not hold, and how its shop measures.</summary>
    public static PaperNotes Of(Job job)
    {
        var open = job.Assumed.Where(assumption => !job.Confirmed.Contains(assumption.Place, StringComparer.Ordinal));
        return new PaperNotes([.. open.Select(assumption => $"{assumption.Place}: {assumption.Value}")]) { IsInInches = Ruler.Of(job).IsInches };
    }

    /// <summary>One loud line over the head of a drawing and the list left of it; nothing when all is confirmed.</summary>
    /// <param name="corner">Lower left corner of the head's test square.</param>
    internal IEnumerable<DrawnText> Texts(Point2 corner)
    {
        if (Unconfirmed.IsEmpty)
        {
            yield break;
        }

        ImmutableArray<string> lines = [FormattableString.Invariant($"Assumed, not confirmed, {Unconfirmed.Length}:"), .. Unconfirmed];
        var left = corner.X - Gap - lines.Max(line => LetterWidth.Estimate(line, TextHeight));
        var top = corner.Y + SheetHead.SquareSide;
        yield return new DrawnText(
            DrawingLayers.Title, FormattableString.Invariant($"NOT CONFIRMED: {Unconfirmed.Length} assumed {(Unconfirmed.Length == 1 ? "value" : "values")}, listed on the left"),
            new Point2(corner.X, top + (2 * LineStep)), 2 * TextHeight, 0, TextAnchor.Start);
        for (var i = 0; i < lines.Length; i++)
        {
            yield return new DrawnText(
                DrawingLayers.Title, lines[i], new Point2(Math.Floor(left), top - (TextHeight / 2) - (i * LineStep)), TextHeight, 0, TextAnchor.Start);
        }
    }
}
