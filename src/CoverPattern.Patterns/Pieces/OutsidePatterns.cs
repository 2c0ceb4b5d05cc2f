using System;
using System.Collections.Generic;
using System.Collections.Immutable;
using System.Globalization;
using System.Linq;
using CoverPattern.Geometry;
using CoverPattern.Patterns.Jobs;
using CoverPattern.Patterns.Seams;

namespace CoverPattern.Patterns.Pieces;

/// <summary>Puts pieces drawn elsewhere among the patterns and pieces of a job: from there on they go the way of all pieces.</summary>
/// <remarks>They are joined to nothing: their edge is one run round the sew line, of role raw, and their cut line is the file's.</remarks>
public static class OutsidePatterns
{
    // As for the program's own pieces, millimetres.
    private const double LabelError = 0.5;

    /// <summary>The set with the outside pieces of every cover.</summary>
    /// <param name="set">Patterns and pieces of the cover.</param>
    /// <param name="job">Names the outside pieces.</param>
    /// <returns>Patterns named "X-" and the piece's name, pieces numbered after them, behind those of their cover.</returns>
    public static PieceSet Add(PieceSet set, Job job)
    {
        ArgumentNullException.ThrowIfNull(set);
        ArgumentNullException.ThrowIfNull(job);
        if (job.Outside.IsEmpty)
        {
            return set;
        }

        (OutsidePiece Piece, string Cloth)[] outside = [.. job.Outside.SelectMany(wish => wish.Pieces.Select(piece => (piece, wish.Cloth))).OrderBy(entry => entry.piece.Name, StringComparer.Ordinal)];
        var perCover = set.Pieces.Length / job.Covers;
        var pieces = ImmutableArray.CreateBuilder<Piece>();
        for (var cover = 0; cover < job.Covers; cover++)
        {
            ImmutableArray<Piece> own = [.. set.Pieces.Skip(cover * perCover).Take(perCover)];
            // Labels of several covers begin with the cover and a blank.
            var prefix = own[0].Label[..(own[0].Label.LastIndexOf(' ') + 1)];
            pieces.AddRange(own);
            pieces.AddRange(outside.SelectMany(entry => List(entry.Piece, prefix)));
        }

        return set with { Patterns = [.. set.Patterns, .. outside.Select(entry => Make(entry.Piece, entry.Cloth, job.Covers))], Pieces = pieces.ToImmutable() };
    }

    private static string Id(OutsidePiece piece) => "X-" + piece.Name;

    private static IEnumerable<Piece> List(OutsidePiece piece, string prefix)
    {
        var digits = (piece.Right + piece.Left).ToString(CultureInfo.InvariantCulture).Length;
        for (var i = 0; i < piece.Right + piece.Left; i++)
        {
            var label = prefix + Id(piece) + "." + (i + 1).ToString(CultureInfo.InvariantCulture).PadLeft(digits, '0');
            yield return new Piece(label, Id(piece), i >= piece.Right, [.. Enumerable.Range(0, 1 + piece.Cutouts.Length).Select(_ => new PieceRun(label, EdgeRole.Raw, null))], []);
        }
    }

    private static Pattern Make(OutsidePiece piece, string cloth, int covers)
    {
        var label = InscribedCircle.Largest([piece.SewLine, .. piece.Cutouts], LabelError);
        return new Pattern(
            Id(piece),
            cloth,
            PieceKind.Outside,
            covers * (piece.Right + piece.Left),
            piece.SewLine,
            piece.CutLine,
            [Run(piece.SewLine)],
            [],
            [.. piece.Slits.Select(slit => Slit(slit.Outer, slit.Inner, piece.SewLine)).OrderBy(notch => notch.AtMm)],
            [.. piece.Drills.Select(at => new DrillMark(at, "drill mark"))],
            [.. piece.Lines.Select(line => new MarkLine(line, "line"))],
            [.. piece.Cutouts.Select(ring => new Cutout("hole", ring, ring, Run(ring)))],
            new GrainLine(piece.GrainFrom, piece.GrainTo),
            [],
            Grid.Snap(label.Centre),
            label.Radius);
    }

    private static EdgeRun Run(ImmutableArray<Point2> ring) => new(0, 0, EdgeRole.Raw, string.Empty, string.Empty, EdgeSide.None, Rings.Perimeter(ring), 0);

    /// <summary>A slit with the place of the sew line that lies nearest to it.</summary>
    private static Notch Slit(Point2 outer, Point2 inner, ImmutableArray<Point2> sewLine)
    {
        var (best, at, run) = (sewLine[0], 0.0, 0.0);
        for (var i = 0; i < sewLine.Length; i++)
        {
            var (from, to) = (sewLine[i], sewLine[(i + 1) % sewLine.Length]);
            var length = Point2.Distance(from, to);
            var share = Math.Clamp(Point2.Dot(outer - from, to - from) / (length * length), 0, 1);
            var foot = Point2.Between(from, to, share);
            if (Point2.Distance(foot, outer) < Point2.Distance(best, outer))
            {
                (best, at) = (foot, run + (share * length));
            }

            run += length;
        }

        return new Notch(0, at, NotchForm.Slit, Grid.Snap(best), outer, inner);
    }
}
