using System;
using System.Collections.Generic;
using System.Collections.Immutable;
using System.Linq;
using CoverPattern.Geometry;
using CoverPattern.Patterns.Pieces;

namespace CoverPattern.Files.Drawings;

/// <summary>The writing on one placed piece; it stands on the sheet and so is upright however the piece lies.</summary>
internal static class PieceTexts
{
    /// <summary>What a head says of pieces whose label stands inside, for want of a wide allowance; empty when there are none.</summary>
    /// <param name="count">Pieces or patterns on the sheet.</param>
    /// <param name="texts">Their writing.</param>
    public static string Stickers(int count, IEnumerable<DrawnText> texts)
    {
        // A piece with its label in the allowance has its two large lines for the screen.
        var inside = count - (texts.Count(text => text.Layer == DrawingLayers.Name) / 2);
        return inside == 0 ? string.Empty : FormattableString.Invariant($"; {inside} without room in an allowance: label on a sticker");
    }

    /// <param name="pattern">The shape of the piece.</param>
    /// <param name="map">How the shape lies on the sheet.</param>
    /// <param name="name">The name.</param>
    /// <param name="below">What stands below it.</param>
    public static ImmutableArray<DrawnText> Write(Pattern pattern, RigidMap map, string name, string below)
    {
        var circle = new FreeCircle(map.Apply(pattern.LabelSpot), pattern.LabelRadius)
            .ClearOf(map.Apply(pattern.Grain.From), map.Apply(pattern.Grain.To));
        var label = AllowanceLabel.Find(pattern, name == pattern.Id ? [name, pattern.Cloth] : [name, pattern.Id, pattern.Cloth]);
        foreach (var (from, to) in PatternBlock.Draw(pattern).Lines.Where(line => line.Layer == DrawingLayers.DrawnMark || (label is null && line.Layer == DrawingLayers.Fold)).SelectMany(line => line.Steps()))
        {
            circle = circle.ClearOfMark(map.Apply(from), map.Apply(to));
        }

        ImmutableArray<DrawnText> names =
        [
            .. label is null ? [] : new[] { label.OnSheet(map) },
            .. PieceLabel.Write(name, below, circle, label is null ? DrawingLayers.Label : DrawingLayers.Name),
        ];
        return [.. names, .. MarkWords.Write(pattern, map, names)];
    }
}
