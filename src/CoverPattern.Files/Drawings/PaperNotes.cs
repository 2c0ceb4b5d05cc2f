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

    // On a sheet that one holds in the hand, beside those that lie on the table.
    private const double InHand = 1.0 / 3;

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

    /// <summary>A sheet of the list alone, for papers of many small pages.</summary>
    internal Drawing Sheet() => new(
        "Assumed values",
        [],
        [],
        [SheetHead.Square(default)],
        [
            .. SheetHead.Texts(default, "NOT CONFIRMED: what was assumed", ["State the values in the job file, or name them under confirmed"]),
            .. List(0, SheetHead.SquareSide, InHand),
        ]);

    /// <summary>One loud line over the head of a drawing and the list left of it; nothing when all is confirmed.</summary>
    /// <param name="corner">Lower left corner of the head's test square.</param>
    /// <param name="listedOn">Where else the list stands, such as "the first page"; null for left of this head.</param>
    internal IEnumerable<DrawnText> Texts(Point2 corner, string? listedOn = null)
    {
        if (Unconfirmed.IsEmpty)
        {
            return [];
        }

        var top = corner.Y + SheetHead.SquareSide;
        var loud = new DrawnText(
            DrawingLayers.Title, FormattableString.Invariant($"NOT CONFIRMED: {Unconfirmed.Length} assumed {(Unconfirmed.Length == 1 ? "value" : "values")}, listed on {listedOn ?? "the left"}"),
            new Point2(corner.X, top + (2 * LineStep)), 2 * TextHeight, 0, TextAnchor.Start);
        return listedOn is null ? List(corner.X, top, 1).Prepend(loud) : [loud];
    }

    private IEnumerable<DrawnText> List(double right, double top, double scale)
    {
        var (height, step) = (TextHeight * scale, LineStep * scale);
        ImmutableArray<string> lines = [FormattableString.Invariant($"Assumed, not confirmed, {Unconfirmed.Length}:"), .. Unconfirmed];
        var left = right - Gap - lines.Max(line => LetterWidth.Estimate(line, height));
        return lines.Select((line, i) => new DrawnText(
            DrawingLayers.Title, line, new Point2(Math.Floor(left), top - (height / 2) - (i * step)), height, 0, TextAnchor.Start));
    }
}
