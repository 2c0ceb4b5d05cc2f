using System;
using System.Collections.Immutable;
using System.IO;
using System.Linq;
using System.Text.Json;
using CoverPattern.Geometry;
using CoverPattern.Lays.Nesting;

namespace Bench;

/// <summary>A published strip packing set, scaled to millimetres.</summary>
/// <param name="Name">The set's name.</param>
/// <param name="Scale">Millimetres for one unit of the set; a power of two, so that whole coordinates stay exact.</param>
/// <param name="Width">Width of the strip in the set's units.</param>
/// <param name="Area">Area of all items in the set's units.</param>
/// <param name="Items">The items in millimetres.</param>
internal sealed record NestingSet(string Name, double Scale, double Width, double Area, ImmutableArray<NestingItem> Items)
{
    /// <summary>Least distance between two items, in the set's units; 0 where the set does not say.</summary>
    public double Spacing { get; init; }

    /// <summary>The set on each of the strip widths that its file names; on its one width where it names no more.</summary>
    public static ImmutableArray<NestingSet> ReadAll(string path)
    {
        var set = Read(path);
        using var file = JsonDocument.Parse(File.ReadAllBytes(path));
        return file.RootElement.TryGetProperty("widths", out var widths)
            ? [.. widths.EnumerateArray().Select(width => set with { Name = set.Name + "-" + width.GetRawText(), Width = width.GetDouble() })]
            : [set];
    }

    public static NestingSet Read(string path)
    {
        using var file = JsonDocument.Parse(File.ReadAllBytes(path));
        var root = file.RootElement;
        var width = root.GetProperty("stripWidth").GetDouble();
        var scale = root.TryGetProperty("scale", out var stated) ? stated.GetDouble() : Math.Pow(2, Math.Round(Math.Log2(4000 / width)));
        var items = root.GetProperty("items").EnumerateArray().Select(item => ReadItem(item, scale)).ToImmutableArray();
        var area = items.Sum(item => item.Quantity * (Rings.SignedArea(item.Outline) + item.Holes.Sum(hole => Rings.SignedArea(hole))));
        return new NestingSet(root.GetProperty("name").GetString()!, scale, width, area / scale / scale, items)
        {
            Spacing = root.TryGetProperty("spacing", out var spacing) ? spacing.GetDouble() : 0,
        };
    }

    private static NestingItem ReadItem(JsonElement item, double scale)
    {
        var holes = item.TryGetProperty("holes", out var given)
            ? given.EnumerateArray().Select(hole => ReadRing(hole, scale, counterClockwise: false)).ToImmutableArray()
            : [];
        return new NestingItem(
            ReadRing(item.GetProperty("outline"), scale, counterClockwise: true),
            holes,
            item.GetProperty("demand").GetInt32(),
            ReadTurns(item.GetProperty("rotations")));
    }

    private static AllowedTurns ReadTurns(JsonElement turns) => turns.ValueKind == JsonValueKind.Array
        ? new AllowedTurns([.. turns.EnumerateArray().Select(turn => turn.GetDouble())], IsFree: false)
        : AllowedTurns.Free;

    private static ImmutableArray<Point2> ReadRing(JsonElement ring, double scale, bool counterClockwise)
    {
        var points = ring.EnumerateArray().Select(point => Grid.Snap(new Point2(scale * point[0].GetDouble(), scale * point[1].GetDouble()))).ToImmutableArray();
        return Rings.SignedArea(points) > 0 == counterClockwise ? points : [.. points.Reverse()];
    }
}
