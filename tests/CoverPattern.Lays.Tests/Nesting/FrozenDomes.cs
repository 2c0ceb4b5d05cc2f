using System;
using System.Collections.Immutable;
using System.IO;
using System.Linq;
using System.Text.Json;
using CoverPattern.Geometry;
using CoverPattern.Lays.Nesting;

namespace CoverPattern.Lays.Tests.Nesting;

/// <summary>The dome sets that stand frozen beside the bench.</summary>
internal static class FrozenDomes
{
    /// <summary>A set on one of its widths.</summary>
    public static NestingTask Task(string name, double width)
    {
        using var file = JsonDocument.Parse(File.ReadAllBytes(Path.Combine(AppContext.BaseDirectory, "Domes", name + ".json")));
        var items = file.RootElement.GetProperty("items").EnumerateArray().Select(item => new NestingItem(
            Ring(item.GetProperty("outline")),
            [.. item.GetProperty("holes").EnumerateArray().Select(Ring)],
            item.GetProperty("demand").GetInt32(),
            AllowedTurns.HalfTurn));
        return new NestingTask(width, file.RootElement.GetProperty("spacing").GetDouble(), [.. items], Effort: 1, Seed: 1);
    }

    private static ImmutableArray<Point2> Ring(JsonElement ring) => [.. ring.EnumerateArray().Select(point => Grid.Snap(new Point2(point[0].GetDouble(), point[1].GetDouble())))];
}
