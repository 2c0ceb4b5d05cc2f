using System;
using System.Collections.Immutable;
using System.Linq;
using CoverPattern.Files.Exchange;
using CoverPattern.Geometry;
using CoverPattern.Patterns.Jobs;

namespace CoverPattern.Files.Jobs;

/// <summary>Turns a piece of an exchange file so that its grain lies along +x, puts it on the grid and looks whether it can be cut so.</summary>
internal static class OutsideTurn
{
    /// <summary>The piece, or what is wrong with it.</summary>
    /// <param name="piece">As the file has it.</param>
    /// <param name="name">Its name in this job.</param>
    internal static (OutsidePiece? Piece, string Fault) Make(ExchangePiece piece, string name)
    {
        if (piece.GrainFrom == piece.GrainTo)
        {
            return (null, "no grain line on layer 7.");
        }

        if (piece.Right + piece.Left < 1)
        {
            return (null, "a quantity of none.");
        }

        var along = (piece.GrainTo - piece.GrainFrom).Unit();
        var turn = new RigidMap(along.X, -along.Y, default, Mirrored: false);
        var corner = Rings.Bounds(turn.Apply(piece.CutLine)).Low;
        var map = turn with { Shift = new Point2(-Math.Floor(corner.X), -Math.Floor(corner.Y)) };
        var cutLine = Grid.Snap(map.Apply(piece.CutLine));
        ImmutableArray<ImmutableArray<Point2>> cutouts = [.. piece.Cutouts.Select(ring => Clockwise(Grid.Snap(map.Apply(ring))))];
        var sewLines = piece.SewLines.Select(line => Grid.Snap(map.Apply(line))).ToArray();
        var finished = sewLines.Where(IsRing).Select(ring => ring[..^1]).OrderByDescending(ring => Math.Abs(Rings.SignedArea(ring))).FirstOrDefault();
        var isRim = !finished.IsDefault && cutouts.Any(hole => Math.Abs(Rings.SignedArea(hole)) >= Math.Abs(Rings.SignedArea(finished)));
        var sewLine = finished.IsDefault || isRim ? cutLine : CounterClockwise(finished);
        if (Fault(cutLine, sewLine, cutouts) is { } fault)
        {
            return (null, fault);
        }

        return (new OutsidePiece(name, piece.Right, piece.Left, sewLine, cutLine)
        {
            Cutouts = cutouts,
            Lines = [.. sewLines.Where(line => isRim || finished.IsDefault || !IsRing(line) || !line[..^1].SequenceEqual(finished)), .. piece.Lines.Select(line => Grid.Snap(map.Apply(line)))],
            Slits = [.. piece.Notches.Select(notch => Slit(notch, map, along))],
            Drills = [.. piece.Drills.Select(drill => Grid.Snap(map.Apply(drill.At)))],
            GrainFrom = Grid.Snap(map.Apply(piece.GrainFrom)),
            GrainTo = Grid.Snap(map.Apply(piece.GrainTo)),
        }, string.Empty);
    }

    private static bool IsRing(ImmutableArray<Point2> line) => line.Length > 3 && line[0] == line[^1];

    private static ImmutableArray<Point2> CounterClockwise(ImmutableArray<Point2> ring) => Rings.SignedArea(ring) < 0 ? [.. ring.Reverse()] : ring;

    private static ImmutableArray<Point2> Clockwise(ImmutableArray<Point2> ring) => Rings.SignedArea(ring) > 0 ? [.. ring.Reverse()] : ring;

    private static string? Fault(ImmutableArray<Point2> cutLine, ImmutableArray<Point2> sewLine, ImmutableArray<ImmutableArray<Point2>> cutouts)
    {
        var steps = Rings.ToSteps(cutLine);
        if (!ExactPredicates.IsSimple(steps) || !ExactPredicates.IsSimple(Rings.ToSteps(sewLine)) || cutouts.Any(ring => !ExactPredicates.IsSimple(Rings.ToSteps(ring))))
        {
            return "an outline that meets itself once its corners are rounded to the grid";
        }

        if (Rings.ToSteps(sewLine).Any(point => ExactPredicates.Locate(steps, point) < 0))
        {
            return "a sew line that leaves the cut line";
        }

        return cutouts.Any(ring => Rings.ToSteps(ring).Any(point => ExactPredicates.Locate(steps, point) <= 0)) ? "a hole that reaches the cut line" : null;
    }

    private static (Point2 Outer, Point2 Inner) Slit(ExchangeNotch notch, RigidMap map, Point2 along)
    {
        // Directions turn with the piece.
        var direction = RigidMap.FromDegrees(notch.AngleDegrees, default, mirrored: false).Apply(new Point2(1, 0));
        var turned = new Point2(Point2.Dot(direction, along), Point2.Cross(along, direction));
        var outer = map.Apply(notch.At);
        return (Grid.Snap(outer), Grid.Snap(outer + (notch.DepthMm * turned)));
    }
}
