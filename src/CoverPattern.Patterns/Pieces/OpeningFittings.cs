using System;
using System.Collections.Generic;
using System.Collections.Immutable;
using System.Globalization;
using System.Linq;
using CoverPattern.Patterns.Jobs;
using CoverPattern.Patterns.Openings;

namespace CoverPattern.Patterns.Pieces;

/// <summary>Lists what goes on the openings of one cover beside cloth.</summary>
public static class OpeningFittings
{
    // Of a binding round the edge of sheet or mesh this much is seen on either side (common practice, no source), millimetres.
    private const double BindingSeen = 12;

    // A flap rolled by hand takes this many times the room of its cloth, and its cloth this thickness where nobody says (own choices), millimetres.
    private const double Looseness = 2.5;
    private const double UsualThickness = 0.7;

    // Both tails of a tie-back beyond the roll, for the knot or toggle (own choice), millimetres.
    private const double Knot = 150;

    /// <summary>All fittings, in order of openings.</summary>
    /// <param name="job">Notions and thickness of cloths are read.</param>
    /// <param name="openings">The openings laid.</param>
    /// <param name="added">What closes them, see <see cref="OpeningPieces"/>.</param>
    public static ImmutableArray<Fitting> Of(Job job, OpeningLaying openings, ImmutableArray<AddedPiece> added)
    {
        ArgumentNullException.ThrowIfNull(job);
        ArgumentNullException.ThrowIfNull(openings);
        return
        [
            .. openings.Openings.SelectMany(opening => Of(job, opening, [.. added.Where(piece => Belongs(piece, opening.Label))])),
            .. openings.Slits.SelectMany(slit => Of(job, slit, [.. added.Where(piece => Belongs(piece, slit.Label))])),
        ];
    }

    private static bool Belongs(AddedPiece piece, string opening) =>
        piece.Label.StartsWith(opening, StringComparison.Ordinal) && piece.Label.Length > opening.Length && !char.IsAsciiDigit(piece.Label[opening.Length]);

    private static IEnumerable<Fitting> Of(Job job, LaidSlit slit, AddedPiece[] strips) =>
    [
        new Fitting(Fitting.Zip, slit.Label, slit.Label + "z1", slit.LengthMm, 0),
        .. strips.Select(strip => new Fitting(Fitting.HookLoop, slit.Label, strip.Label, strip.LengthOf(2), job.Notions.HookLoop.Millimetres)),
    ];

    private static IEnumerable<Fitting> Of(Job job, LaidOpening opening, AddedPiece[] pieces)
    {
        Fitting Make(string what, string label, double length, double width) => new(what, opening.Label, label, length, width);
        var zips = opening.Zips.Select(zip => Make(Fitting.Zip, zip.Label, zip.LengthMm, 0) with { IsSeparating = opening.ComesOff }).Concat(Middles(job, opening, pieces).Select(zip => Make(Fitting.Zip, zip.Label, zip.LengthMm, 0)));
        var hooks = job.Notions.HookLoop.Millimetres;
        var held = opening.Sides.Where(side => opening.JoinOf(side.Side) == JoinKind.HookLoop).Sum(side => side.To - side.From);
        return
        [
            .. zips,
            .. held > 0 ? OpeningPart.Of(opening.Wish).Where(part => !part.IsFixed).Select(part => Make(Fitting.HookLoop, opening.Label + part.Letter, held, hooks)) : [],
            .. pieces.Where(piece => StripPieces.IsOverZip(piece.Label)).Select(piece => Make(Fitting.HookLoop, piece.Label, piece.LengthOf(2), hooks)),
            .. opening.Wish.Threshold is { } threshold ? [Make(Fitting.HookLoop, opening.Label + StripPieces.Threshold, 2 * threshold.Millimetres, hooks)] : Array.Empty<Fitting>(),
            .. pieces.Where(piece => piece.Kind is PieceKind.Pane or PieceKind.Screen).Select(piece => (piece, Bound: Bound(piece))).Where(entry => entry.Bound > 0)
                .Select(entry => Make(Fitting.Binding, entry.piece.Label, entry.Bound, MakeUp.Of(MakeUpForm.Bound, new Measure(BindingSeen, string.Empty)).BindingMm)),
            .. opening.Wish.Webbing is { } webbing ? [Make(Fitting.Webbing, opening.Label, opening.Line.Length, webbing.Millimetres)] : Array.Empty<Fitting>(),
            .. opening.Region.Marks.Where(mark => mark.Purpose == TieBacks.Purpose).Select(_ => Make(Fitting.TieBack, opening.Label, TieBackLength(job, opening), hooks)),
        ];
    }

    /// <summary>The zips between the leaves of each part.</summary>
    private static IEnumerable<ZipRun> Middles(Job job, LaidOpening opening, AddedPiece[] pieces)
    {
        foreach (var part in OpeningPart.Of(opening.Wish))
        {
            var line = opening.Label + "m" + (part.IsFirst ? string.Empty : part.Letter);
            foreach (var length in pieces.SelectMany(piece => piece.Edges.Select((edge, i) => (edge, i)).Where(entry => entry.edge.Arc == line && entry.edge.IsSecond).Select(entry => piece.LengthOf(entry.i))))
            {
                var count = Math.Max(1, (int)Math.Ceiling((length / job.Notions.ZipLongest.Millimetres) - 1e-9));
                foreach (var i in Enumerable.Range(0, count))
                {
                    yield return new ZipRun(string.Create(CultureInfo.InvariantCulture, $"{opening.Label}{part.Letter}z{i + 1}"), part.Letter, i * length / count, length / count) { IsBetweenLeaves = true };
                }
            }
        }
    }

    /// <summary>Edges of a sheet or mesh that end in a binding: beside teeth, and at the foot.</summary>
    private static double Bound(AddedPiece piece) => Enumerable.Range(0, piece.Edges.Length)
        .Where(i => piece.Edges[i].Allowance < 0 || piece.Edges[i].Role == Seams.EdgeRole.Raw).Sum(piece.LengthOf);

    /// <summary>Round the rolled flap, and the tails: a roll of cloth of length H and thickness t has the diameter 2 sqrt(k H t / pi), k for its looseness [own derivation].</summary>
    private static double TieBackLength(Job job, LaidOpening opening)
    {
        var thickness = job.Cloths.First(cloth => string.Equals(cloth.Name, opening.Wish.Flap, StringComparison.Ordinal)).Thickness?.Millimetres ?? UsualThickness;
        var rolled = TieBacks.RolledLength(opening);
        return (2 * Math.Sqrt(Math.PI * Looseness * rolled * thickness)) + Knot;
    }
}
