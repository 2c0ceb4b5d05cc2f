using System;
using CoverPattern.Geometry;

namespace CoverPattern.Lays;

/// <summary>The part of the table on which pieces may lie, as far as it lies on the grid.</summary>
/// <param name="Origin">Its low corner in lay coordinates, millimetres, on the grid.</param>
/// <param name="Width">Millimetres, on the grid; not positive when there is none.</param>
internal readonly record struct UsableStrip(Point2 Origin, double Width)
{
    /// <summary>The strip of a roll with unused margins and an end allowance; rounded inward by less than a step of the grid.</summary>
    public static UsableStrip Of(double rollWidth, double usableWidth, double endAllowance)
    {
        var margin = (rollWidth - usableWidth) / 2;
        var low = Up(margin);
        return new UsableStrip(new Point2(Up(endAllowance), low), -Up(margin - rollWidth) - low);
    }

    private static double Up(double millimetres) => Math.Ceiling(millimetres * Grid.StepsPerMillimetre) / Grid.StepsPerMillimetre;
}
