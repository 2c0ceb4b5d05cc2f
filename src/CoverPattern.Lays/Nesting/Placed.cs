using System.Collections.Generic;
using System.Linq;
using CoverPattern.Geometry;

namespace CoverPattern.Lays.Nesting;

/// <summary>An outline with the low corner of its box at a place of the strip.</summary>
/// <param name="Outline">What lies there.</param>
/// <param name="X">Steps along the strip.</param>
/// <param name="Y">Steps across the strip.</param>
internal readonly record struct Placed(TurnedOutline Outline, long X, long Y)
{
    /// <summary>Rightmost x, steps.</summary>
    public long Right => X + Outline.Width;

    /// <summary>A layout from what was placed, in order of item and place along the strip.</summary>
    public static NestingLayout ToLayout(IEnumerable<Placed> placed, string method)
    {
        var sorted = placed.OrderBy(p => p.Outline.Item).ThenBy(p => p.X).ThenBy(p => p.Y).ToArray();
        var length = sorted.Length > 0 ? sorted.Max(p => p.Right) : 0;
        return new NestingLayout(
            length / (double)Grid.StepsPerMillimetre,
            [.. sorted.Select(p => p.Outline.At(p.X, p.Y))],
            method);
    }
}
