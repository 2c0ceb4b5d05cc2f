using System;
using System.Collections.Generic;
using System.Linq;
using CoverPattern.Files.Drawings;
using CoverPattern.Geometry;
using NetTopologySuite.Geometries;

namespace CoverPattern.Files.Tests.Drawings;

/// <summary>Holds the writing of a drawing to what a person at the table needs, by geometry of other make.</summary>
/// <remarks>A letter of a bold sans serif is taken as 0.82 of its capitals' height wide (measured on a common one).</remarks>
internal static class WritingRules
{
    private const double Letter = 0.82;

    /// <summary>Fails with all complaints, were there any.</summary>
    public static void None(IEnumerable<string> complaints)
    {
        string[] all = [.. complaints];
        if (all.Length > 0)
        {
            Assert.Fail(string.Join("\n", all));
        }
    }

    /// <summary>All that is wrong with the writing on the pieces of a drawing.</summary>
    public static IEnumerable<string> Complaints(Drawing drawing)
    {
        var blocks = drawing.Blocks.ToDictionary(block => block.Name);
        var pieces = drawing.Insertions.Select(insertion => new Sheeted(insertion, blocks[insertion.Block])).ToArray();
        var texts = drawing.Texts.Where(text => text.Layer != DrawingLayers.Title && text.Layer != DrawingLayers.TestSquare && text.Layer != DrawingLayers.Scale)
            .Select(text => (text, Box: Box(text))).ToArray();
        for (var i = 0; i < texts.Length; i++)
        {
            foreach (var other in texts.Skip(i + 1).Where(other => other.Box.EnvelopeInternal.Intersects(texts[i].Box.EnvelopeInternal) && other.Box.Intersects(texts[i].Box)))
            {
                yield return $"{texts[i].text.Text} over {other.text.Text}";
            }

            var (text, box) = texts[i];
            foreach (var piece in pieces.Where(piece => piece.Cloth.EnvelopeInternal.Intersects(box.EnvelopeInternal) && piece.Cloth.Intersects(box)))
            {
                if (!piece.Cloth.Contains(box))
                {
                    yield return $"{text.Text} ({text.Layer.Name}) is not wholly inside {piece.Name}";
                }

                // A large name for the screen may stand across folds and the sew lines of what lies in the piece; nothing stands on a mark.
                foreach (var line in piece.Lines.Where(line => text.Layer != DrawingLayers.Name || line.Layer == DrawingLayers.Grain || line.Layer == DrawingLayers.DrawnMark))
                {
                    if (line.Shape.EnvelopeInternal.Intersects(box.EnvelopeInternal) && line.Shape.Intersects(box))
                    {
                        yield return $"{text.Text} ({text.Layer.Name}) over {line.Layer.Name} of {piece.Name}";
                    }
                }
            }
        }
    }

    /// <summary>The rectangle in which a text stands.</summary>
    public static Polygon Box(DrawnText text)
    {
        var width = Letter * text.Height * text.Text.Length;
        var start = text.Anchor switch { TextAnchor.Start => 0, TextAnchor.Middle => -width / 2, _ => -width };
        var (sine, cosine) = Math.SinCos(text.TurnDegrees * Math.PI / 180);
        Coordinate At(double x, double y) => new(text.At.X + (cosine * x) - (sine * y), text.At.Y + (sine * x) + (cosine * y));
        var (low, high) = (-text.Height / 2, text.Height / 2);
        return new Polygon(new LinearRing([At(start, low), At(start + width, low), At(start + width, high), At(start, high), At(start, low)]));
    }

    private sealed class Sheeted
    {
        public Sheeted(BlockInsertion insertion, DrawnBlock block)
        {
            Name = block.Name;
            var map = insertion.Map;
            Coordinate[] Ring(DrawnLine line) => [.. line.Points.Select(map.Apply).Select(p => new Coordinate(p.X, p.Y)), .. line.IsClosed ? [To(map.Apply(line.Points[0]))] : Array.Empty<Coordinate>()];
            Cloth = new Polygon(new LinearRing(Ring(block.Lines.Single(line => line.Layer == DrawingLayers.Cut))));
            Lines = [.. block.Lines.Select(line => (line.Layer, (NetTopologySuite.Geometries.Geometry)new LineString(Ring(line))))];
        }

        public string Name { get; }

        public Polygon Cloth { get; }

        public (DrawingLayer Layer, NetTopologySuite.Geometries.Geometry Shape)[] Lines { get; }

        private static Coordinate To(Point2 point) => new(point.X, point.Y);
    }
}
