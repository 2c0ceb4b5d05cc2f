using System.Collections.Generic;
using System.Collections.Immutable;
using System.Linq;
using CoverPattern.Files.Drawings;
using CoverPattern.Geometry;
using CoverPattern.Lays;
using CoverPattern.Patterns.Pieces;

namespace CoverPattern.Files.Tests.Drawings;

/// <summary>What must be found in a drawn file, worked out from the pieces and not from the drawing.</summary>
internal static class LineComparison
{
    /// <summary>Drawn files agree with the pieces to this, millimetres: a thirtieth of a pen line.</summary>
    public const double Tolerance = 0.01;

    /// <summary>Layer and points of the lines of every placed piece, in the order pieces are placed, layer by layer.</summary>
    public static IEnumerable<(string Layer, ImmutableArray<Point2> Points)> Expected(Lay lay) =>
        lay.Placements.SelectMany(placement => Of(SamplePieces.PatternOf(placement.Piece), SamplePieces.MapOf(placement)));

    public static IEnumerable<(string Layer, ImmutableArray<Point2> Points)> Of(Pattern pattern, RigidMap map)
    {
        yield return ("CUT", map.Apply(pattern.CutLine));
        yield return ("SEW", map.Apply(pattern.SewLine));
        foreach (var cutout in pattern.Cutouts)
        {
            // A bare edge is one line: the knife's.
            if (!cutout.Rim.SequenceEqual(cutout.CutLine))
            {
                yield return ("SEW", map.Apply(cutout.Rim));
            }

            yield return ("INNER_CUT", map.Apply(cutout.CutLine));
        }

        foreach (var fold in pattern.Folds)
        {
            yield return ("FOLD", map.Apply([fold.From, fold.To]));
        }

        foreach (var drill in pattern.Drills.Where(drill => drill.IsPierced))
        {
            yield return ("PIERCE", map.Apply(drill.HoleRing()));
        }

        foreach (var notch in pattern.Notches)
        {
            yield return (notch.Form == NotchForm.Slit ? "NOTCH" : "NOTCH_TICK", map.Apply([notch.Outer, notch.Inner]));
        }
    }

    /// <summary>Holds the lines of some layers of a file to those expected, in their order within each layer.</summary>
    public static void Check(
        IEnumerable<(string Layer, ImmutableArray<Point2> Points)> expected, IEnumerable<(string Layer, ImmutableArray<Point2> Points)> found)
    {
        var foundByLayer = found.ToLookup(line => line.Layer, line => line.Points);
        foreach (var layer in expected.GroupBy(line => line.Layer, line => line.Points))
        {
            var lines = foundByLayer[layer.Key].ToArray();
            Assert.Equal(layer.Count(), lines.Length);
            foreach (var (wanted, line) in layer.Zip(lines))
            {
                Assert.Equal(wanted.Length, line.Length);
                Assert.All(wanted.Zip(line), pair => Assert.InRange(Point2.Distance(pair.First, pair.Second), 0, Tolerance));
            }
        }
    }

    /// <summary>How many lines of each layer and kind a drawing has in a block, as ezdxf's reader counts them.</summary>
    public static ImmutableSortedDictionary<string, int> Counts(IEnumerable<DrawnLine> lines) => lines
        .GroupBy(line => line.Layer.Name + (line.Points.Length == 2 ? " LINE" : " LWPOLYLINE"))
        .ToImmutableSortedDictionary(group => group.Key, group => group.Count());
}
