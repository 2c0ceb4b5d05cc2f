using System;
using System.Collections.Generic;
using System.Collections.Immutable;
using System.Globalization;
using System.IO;
using System.Linq;
using System.Text;
using System.Text.Json.Nodes;
using CoverPattern.Files.Jobs;
using CoverPattern.Geometry;
using CoverPattern.Patterns.Pieces;
using CoverPattern.Workshop;

namespace Bench;

/// <summary>Makes the dome sets from jobs and writes them, so that later programs are measured on the same outlines.</summary>
internal static class FrozenSets
{
    // The cut next above the equator, and a radius at which facets stay about half a metre to a metre large.
    private static readonly (int Frequency, int Rows, int Radius)[] Domes = [(2, 3, 2000), (3, 5, 2500), (4, 7, 3000), (5, 8, 3500), (6, 10, 4000)];

    internal static int Run(ReadOnlySpan<string> words)
    {
        if (words.Length != 2 || words[0] != "--out")
        {
            Console.Error.WriteLine("usage: bench freeze --out <folder>");
            return 1;
        }

        Directory.CreateDirectory(words[1]);
        foreach (var (frequency, rows, radius) in Domes)
        {
            foreach (var hasWindows in new[] { false, true })
            {
                var name = string.Create(CultureInfo.InvariantCulture, $"dome-{frequency}v{(hasWindows ? "-windows" : string.Empty)}");
                File.WriteAllText(Path.Combine(words[1], name + ".json"), Set(name, Pieces(frequency, rows, radius, hasWindows)));
            }
        }

        return 0;
    }

    private static PieceSet Pieces(int frequency, int rows, int radius, bool hasWindows)
    {
        var windows = hasWindows ? """, "windows": [ { "rows": "2", "aperture": "260 mm", "pane": "clear" } ]""" : string.Empty;
        var text = Encoding.UTF8.GetBytes(string.Create(CultureInfo.InvariantCulture, $$"""
            { "schemaVersion": 1, "date": "2026-03-01", "frame": { "frequency": {{frequency}}, "cut": {{rows}}, "size": { "radius": {{radius}} } },
              "cloths": [ { "name": "canvas", "rollWidth": "3 m" }, { "name": "clear", "rollWidth": "1.4 m" } ], "lay": { "effort": 1 }{{windows}} }
            """));
        var outcome = Corridor.Run(JobReader.Read(text).Job!, text, null, default);
        return outcome.Result?.Pieces ?? throw new InvalidOperationException(string.Join(' ', outcome.Faults.Select(fault => fault.Place + ": " + fault.Allowed)));
    }

    private static string Set(string name, PieceSet set)
    {
        var counts = set.Pieces.GroupBy(piece => piece.Pattern, StringComparer.Ordinal).ToDictionary(group => group.Key, group => group.Count(), StringComparer.Ordinal);
        var kinds = set.Patterns.Where(pattern => pattern.Cloth == "canvas").GroupBy(pattern => Key(pattern), StringComparer.Ordinal);
        var text = new StringBuilder("{\n");
        text.Append(CultureInfo.InvariantCulture, $"  \"name\": \"{name}\", \"source\": \"bench freeze\", \"stripWidth\": 1480, \"widths\": [1330, 1480, 1980], \"scale\": 1, \"spacing\": 3,\n  \"items\": [\n");
        text.AppendJoin(",\n", kinds.Select((kind, id) => "    " + new JsonObject
        {
            ["id"] = id,
            ["demand"] = kind.Sum(pattern => counts[pattern.Id]),
            ["rotations"] = new JsonArray(0, 180),
            ["outline"] = Ring(kind.First().CutLine),
            ["holes"] = new JsonArray([.. kind.First().Cutouts.Select(cutout => Ring(Fewer(cutout.CutLine)))]),
        }.ToJsonString()));
        return text.Append("\n  ]\n}\n").ToString();
    }

    private static string Key(Pattern pattern) => string.Join(';', pattern.CutLine.Concat(pattern.Cutouts.SelectMany(cutout => cutout.CutLine)).Select(point => string.Create(CultureInfo.InvariantCulture, $"{point.X:R},{point.Y:R}")));

    /// <summary>A round hole with every eighth corner: it lies inside the true one, and the file stays small.</summary>
    private static ImmutableArray<Point2> Fewer(ImmutableArray<Point2> ring) => ring.Length < 48 ? ring : [.. ring.Where((_, i) => i % 8 == 0)];

    private static JsonArray Ring(IEnumerable<Point2> ring) => new([.. ring.Select(point => (JsonNode)new JsonArray(point.X, point.Y))]);
}
