using System;
using System.Collections.Immutable;
using System.Linq;
using CoverPattern.Geometry;
using CoverPattern.Patterns.Jobs;

namespace CoverPattern.Patterns.Openings;

/// <summary>A hood over an opening: a flat front that stands off at its lower edge, and a three-cornered side on either hand, all in one piece.</summary>
/// <param name="Low">Lower left corner of the box on the cover along whose sides and top it is sewn, in the opening's plane.</param>
/// <param name="High">Upper right corner of that box.</param>
/// <param name="DepthMm">How far its lower edge stands off, millimetres.</param>
/// <remarks>
/// With the box w wide and h high and the depth d the front is w by f = sqrt(h^2 + d^2), for it slopes; each side is a right triangle with h
/// along the cover and d across the open foot, and f as its longest side, over which the cloth goes uncut [own derivation].
/// </remarks>
public readonly record struct HoodShape(Point2 Low, Point2 High, double DepthMm)
{
    // The hood is sewn on so far outside the opening, clear of its turned rim (own choice), millimetres.
    internal const double Beyond = 40;

    /// <summary>Width of the box, millimetres.</summary>
    public double WidthMm => High.X - Low.X;

    /// <summary>Height of the box, millimetres.</summary>
    public double HeightMm => High.Y - Low.Y;

    /// <summary>Length of the front down its slope, millimetres.</summary>
    public double FrontMm => Math.Sqrt((HeightMm * HeightMm) + (DepthMm * DepthMm));

    /// <summary>The hood over an opening; null without one.</summary>
    /// <param name="wish">The opening; its outline has a box.</param>
    public static HoodShape? Of(OpeningWish wish)
    {
        ArgumentNullException.ThrowIfNull(wish);
        if (wish.Hood is not { } hood || wish.Outline.Form is OutlineForm.Facets or OutlineForm.Line)
        {
            return null;
        }

        var outline = OutlineShapes.Turned(OutlineShapes.Draw(wish.Outline), wish.Place.Turned);
        return new HoodShape(
            new Point2(outline.Min(point => point.X) - Beyond, outline.Min(point => point.Y) - Beyond),
            new Point2(outline.Max(point => point.X) + Beyond, outline.Max(point => point.Y) + Beyond),
            hood.Millimetres);
    }

    /// <summary>No point of the hood is farther from the opening's rim than this, millimetres; 0 without a hood.</summary>
    /// <param name="wish">The opening.</param>
    internal static double Reach(OpeningWish wish)
    {
        if (Of(wish) is not { } hood)
        {
            return 0;
        }

        var rim = OutlineShapes.Turned(OutlineShapes.Draw(wish.Outline), wish.Place.Turned);
        Point2[] corners = [hood.Low, new(hood.High.X, hood.Low.Y), hood.High, new(hood.Low.X, hood.High.Y)];
        var aside = corners.Max(corner => rim.Min(point => Point2.Distance(corner, point)));
        return Math.Sqrt((aside * aside) + (hood.DepthMm * hood.DepthMm));
    }

    /// <summary>It laid flat, counter-clockwise from the lower left corner of the front: front foot, right foot, right side, top, left side, left foot.</summary>
    public ImmutableArray<Point2> Flat()
    {
        var (width, height, front) = (WidthMm, HeightMm, FrontMm);
        var (aside, down) = (height * DepthMm / front, height * height / front);
        return [new(0, 0), new(width, 0), new(width + aside, front - down), new(width, front), new(0, front), new(-aside, front - down)];
    }
}
