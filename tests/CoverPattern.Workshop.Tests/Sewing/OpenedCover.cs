using System;
using System.Collections.Generic;
using System.Linq;

namespace CoverPattern.Workshop.Tests.Sewing;

/// <summary>Sews up a cover with openings of any outline, from pieces.json alone: rims, partners, sheets, areas.</summary>
internal sealed class OpenedCover
{
    private const double AreaShare = 1e-6;
    private const double CornerError = 0.00069;

    // The two sides of a rim are put on the grid each by itself: both ends of a step move on either side, so that it may be longer here and shorter there by that much each.
    private const double StepError = 4 * CornerError;

    // A drawn curve is this near to its outline, by the promise of the openings' page; a corner moves with the grid, millimetres.
    private const double OnOutline = 0.03;

    private readonly SewnFile file;
    private readonly IReadOnlyList<OpeningOrder> orders;
    private readonly TrueCover cover;
    private readonly Dictionary<string, SewnPattern> patterns;
    private readonly Dictionary<string, SewnPiece> pieces;
    private readonly Dictionary<string, List<TrueCell>> cells;
    private readonly double onCover;
    private readonly CellLaying laying;
    private readonly List<LaidFacet> laid = [];
    private readonly List<string> faults = [];

    private OpenedCover(SewnFile file, TrueCover cover, IReadOnlyList<OpeningOrder> orders)
    {
        (this.file, this.orders, this.cover) = (file, orders, cover);
        patterns = file.Patterns.ToDictionary(pattern => pattern.Id);
        pieces = file.Pieces.ToDictionary(piece => piece.Label);
        cells = TrueOpening.CellsOf(cover, orders);

        // A chord this near to its arc crosses a line farther along it the flatter it comes.
        onCover = Math.Max(Tolerances.OnCover, OnOutline / cells.Values.SelectMany(list => list).Min(cell => cell.Steepness));
        laying = new CellLaying(cells, patterns, pieces, onCover);
    }

    /// <summary>Everything that does not fit; empty when the cover can be sewn.</summary>
    internal static IReadOnlyList<string> Faults(string text, SewingOrder order, params IReadOnlyList<OpeningOrder> openings) =>
        Faults(SewnFile.Read(text), TrueCover.Build(order.Sizes), openings);

    /// <summary>Everything that does not fit; empty when the cover can be sewn.</summary>
    internal static IReadOnlyList<string> Faults(SewnFile file, TrueCover cover, IReadOnlyList<OpeningOrder> openings)
    {
        var opened = new OpenedCover(file, cover, openings);
        foreach (var piece in opened.file.Pieces.Where(piece => piece.Facets.Count > 0))
        {
            opened.Lay(piece);
        }

        opened.HoldCells();
        foreach (var piece in opened.file.Pieces)
        {
            opened.HoldPartners(piece);
        }

        opened.HoldRim();
        opened.HoldAreas();
        return opened.faults;
    }

    private void Lay(SewnPiece piece)
    {
        var (best, apart) = laying.BestOf(piece);
        if (best is null || best.Any(facet => !(facet.Way.Error <= onCover)) || !(apart <= patterns[piece.Pattern].Facets.Count * onCover))
        {
            faults.Add(FormattableString.Invariant($"Piece {piece.Label} does not lie on the cover: {best?.Max(facet => facet.Way.Error):0.####} mm off, folds {apart:0.####} mm apart."));
        }

        laid.AddRange((best ?? []).Select(facet => facet with { Way = facet.Way.LaidBy(facet.Keys, facet.Cell) }));
    }

    private void HoldCells()
    {
        foreach (var (label, wanted) in cells)
        {
            foreach (var cell in wanted.Where(cell => laid.Count(facet => facet.Cell == cell) != 1))
            {
                faults.Add($"A part of {label} is covered {laid.Count(facet => facet.Cell == cell)} times.");
            }
        }
    }

    private void HoldPartners(SewnPiece piece)
    {
        var pattern = patterns[piece.Pattern];
        for (var i = 0; i < piece.Runs.Count; i++)
        {
            var (run, sewn) = (pattern.RunOf(i), piece.Runs[i]);
            if (sewn.Partner is null)
            {
                if (run.Role == "seam" || (run.Role == "rim" && OwnerOf(sewn.Arc) is { IsJoined: true } owner && !owner.IsFree(sewn.Arc)))
                {
                    faults.Add($"{piece.Label} run {i} ({sewn.Arc}) has no partner.");
                }

                continue;
            }

            if (!pieces.TryGetValue(sewn.Partner, out var other) || sewn.PartnerRun >= other.Runs.Count || other.Runs[sewn.PartnerRun] is not { } back || back.Partner != piece.Label || back.PartnerRun != i || back.Arc != sewn.Arc)
            {
                faults.Add($"{piece.Label} run {i} is joined to {sewn.Partner}, which is not joined to it.");
                continue;
            }

            var opposite = patterns[other.Pattern].RunOf(sewn.PartnerRun);
            var (path, otherPath) = (pattern.PathOf(i), patterns[other.Pattern].PathOf(sewn.PartnerRun));
            var isRing = pattern.Kind == "windowRing" || patterns[other.Pattern].Kind == "windowRing";
            HoldLengths($"{sewn.Arc} between {piece.Label} and {other.Label}:", (run, path), (opposite, isRing ? [.. otherPath.Reverse()] : otherPath));
            if (OwnerOf(sewn.Arc) is not { IsSetByMarks: true })
            {
                HoldMarks($"{sewn.Arc} between {piece.Label} and {other.Label}:", (pattern, i, run), (patterns[other.Pattern], sewn.PartnerRun), isRing);
            }

            if (run.Role == "seam" && piece.Facets.Count > 0)
            {
                HoldPlace(piece, path, other, otherPath, sewn.Arc);
            }
        }
    }

    private void HoldLengths(string name, (SewnRun Run, FlatPoint[] Path) here, (SewnRun Run, FlatPoint[] Path) there)
    {
        double LengthOf(FlatPoint[] path) => path.Skip(1).Select((point, i) => path[i].DistanceTo(point)).Sum();
        if (!(Math.Abs(here.Run.LengthMm - there.Run.LengthMm) <= Tolerances.PartnerLength) || !(Math.Abs(LengthOf(here.Path) - here.Run.LengthMm) <= Tolerances.PartnerLength))
        {
            faults.Add(FormattableString.Invariant($"{name} {here.Run.LengthMm} mm are to be sewn to {there.Run.LengthMm} mm, drawn {LengthOf(here.Path)} mm."));
        }

        // Step by step the two sides of a rim are one line.
        var steps = here.Path.Skip(1).Select((point, i) => here.Path[i].DistanceTo(point)).ToArray();
        var others = there.Path.Skip(1).Select((point, i) => there.Path[i].DistanceTo(point)).Reverse().ToArray();
        if (steps.Length != others.Length || steps.Zip(others).Any(pair => !(Math.Abs(pair.First - pair.Second) <= StepError)))
        {
            faults.Add(FormattableString.Invariant($"{name} the two sides bend at other places: {steps.Length} and {others.Length} steps, up to {steps.Zip(others).Max(pair => Math.Abs(pair.First - pair.Second)):0.#####} mm apart."));
        }
    }

    private void HoldMarks(string name, (SewnPattern Pattern, int Index, SewnRun Run) here, (SewnPattern Pattern, int Index) there, bool isRing)
    {
        double[] MarksOf(SewnPattern pattern, int run) => [.. pattern.Notches.Where(notch => notch.Run == run).Select(notch => notch.AtMm).Order()];
        var (marks, others) = (MarksOf(here.Pattern, here.Index), MarksOf(there.Pattern, there.Index));
        if (marks.Length != others.Length || (marks.Length == 0 && here.Run.LengthMm > 300)
            || marks.Zip(isRing ? [.. others.Select(at => here.Run.LengthMm - at)] : others.Reverse()).Any(pair => !(Math.Abs(pair.First + pair.Second - here.Run.LengthMm) <= Tolerances.Notch)))
        {
            faults.Add($"{name} {marks.Length} marks do not meet {others.Length}.");
        }
    }

    private void HoldPlace(SewnPiece piece, FlatPoint[] path, SewnPiece other, FlatPoint[] otherPath, string arc)
    {
        var (from, to, back, end) = (Lift(piece, path[0], path[^1]), Lift(piece, path[^1], path[0]), Lift(other, otherPath[0], otherPath[^1]), Lift(other, otherPath[^1], otherPath[0]));
        if (from is null || to is null || back is null || end is null || !(Math.Max(from.Value.DistanceTo(end.Value), to.Value.DistanceTo(back.Value)) <= onCover))
        {
            faults.Add($"{arc} between {piece.Label} and {other.Label}: the edges do not lie at one place.");
        }
    }

    /// <summary>A corner in space, by the facet that has another corner too.</summary>
    private SpacePoint? Lift(SewnPiece piece, FlatPoint corner, FlatPoint beside)
    {
        bool Has(LaidFacet facet, FlatPoint point) => facet.Keys.Any(key => key.DistanceTo(point) <= Tolerances.SamePlace);
        return laid.Where(facet => facet.Piece == piece && Has(facet, corner)).OrderByDescending(facet => Has(facet, beside)).FirstOrDefault()?.Way.Lift(corner);
    }

    /// <summary>Every point of every rim lies on the outline, and the rim's pieces hang together all round.</summary>
    private void HoldRim()
    {
        var ends = new List<SpacePoint>();
        foreach (var piece in file.Pieces.Where(piece => piece.Facets.Count > 0))
        {
            var pattern = patterns[piece.Pattern];
            foreach (var i in Enumerable.Range(0, piece.Runs.Count).Where(i => pattern.RunOf(i).Role == "rim"))
            {
                var (path, arc) = (pattern.PathOf(i), piece.Runs[i].Arc);
                if (!orders.Any(order => order.Owns(arc) && Math.Abs(pattern.RunOf(i).AllowanceMm - order.TurnUnder) <= Tolerances.SamePlace))
                {
                    faults.Add($"{piece.Label}: the rim {arc} has {pattern.RunOf(i).AllowanceMm} mm to turn under.");
                }

                SpacePoint?[] lifted = [.. path.Select(point => OnRim(piece, point, arc))];
                if (lifted.Any(point => point is null))
                {
                    faults.Add(FormattableString.Invariant($"{piece.Label}: {lifted.Count(point => point is null)} of {path.Length} points of the rim {arc} are on none of its facets, or off the outline by up to {path.Max(point => OffOutline(piece, point, arc)):0.###} mm."));
                    continue;
                }

                if (i < pattern.Runs.Count)
                {
                    ends.Add(lifted[0]!.Value);
                    ends.Add(lifted[^1]!.Value);
                }
            }
        }

        // A rim that reaches the finished edge has two ends there; all others meet another end.
        var single = ends.Where((end, i) => ends.Where((_, j) => j != i).All(other => !(other.DistanceTo(end) <= onCover))).ToArray();
        if (single.Any(end => !IsOnHem(end)))
        {
            faults.Add($"{single.Length} ends of the rim meet nothing.");
        }
    }

    private bool IsOnHem(SpacePoint point) => cells.Values.SelectMany(list => list).Select(cell => cell.Whole).Any(face => Enumerable.Range(0, face.Corners.Count)
        .Where(i => face.Edges[i].Neighbour is null)
        .Any(i => CellLaying.Off(face.Corners[i], face.Corners[(i + 1) % face.Corners.Count], point) <= onCover));

    /// <summary>A point of a rim in space; null when it is not on the outline in any facet of the piece that has it.</summary>
    private SpacePoint? OnRim(SewnPiece piece, FlatPoint point, string arc) => FacetsWith(piece, point)
        .Select(facet => (Lifted: facet.Way.Lift(point), facet.Cell))
        .Where(entry => entry.Cell.OffOutline(entry.Lifted, arc) <= OnOutline)
        .Select(entry => (SpacePoint?)entry.Lifted).FirstOrDefault();

    /// <summary>How far a point of a rim lies off its outline, in the facet in which it comes nearest; infinite when it is in none.</summary>
    private double OffOutline(SewnPiece piece, FlatPoint point, string arc) =>
        FacetsWith(piece, point).Select(facet => facet.Cell.OffOutline(facet.Way.Lift(point), arc)).DefaultIfEmpty(double.PositiveInfinity).Min();

    private IEnumerable<LaidFacet> FacetsWith(SewnPiece piece, FlatPoint point) => laid.Where(facet => facet.Piece == piece
        && (facet.Pattern.Facets[facet.Facet].Any(corner => corner.DistanceTo(point) <= Tolerances.SamePlace) || facet.Pattern.Cutouts.Any(cutout => cutout.Rim.Contains(point))));

    /// <summary>Cloth and sheet: each sums to what it has to cover.</summary>
    private void HoldAreas()
    {
        var cloth = file.Pieces.Where(piece => piece.Facets.Count > 0).Select(piece => patterns[piece.Pattern]).ToArray();
        Hold("cloth", cloth, cells.Values.SelectMany(list => list).Sum(cell => cell.Area));
        foreach (var order in orders.Where(order => order.Lap is not null))
        {
            var sheets = file.Pieces.Where(piece => order.Owns(piece.Label) && patterns[piece.Pattern].Kind == order.FillKind).Select(piece => patterns[piece.Pattern]).ToArray();
            Hold($"sheet {order.Label}", sheets, TrueOpening.AreaOf(cover, order) - (order.Hole is { } hole ? TrueOpening.AreaOf(cover, hole) : order.HoleArea));
            if (sheets.Any(sheet => sheet.Runs.Any(run => !(Math.Abs(run.AllowanceMm - order.Lap!.Value) <= Tolerances.SamePlace))))
            {
                faults.Add("a sheet does not reach beyond the rim by its lap.");
            }
        }
    }

    /// <summary>The opening to whose rim an arc belongs.</summary>
    private OpeningOrder? OwnerOf(string arc) => orders.FirstOrDefault(order => order.Owns(arc));

    private void Hold(string what, SewnPattern[] sewn, double truth)
    {
        var area = sewn.Sum(pattern => FlatPoint.AreaOf(pattern.SewLine) + pattern.Cutouts.Sum(cutout => FlatPoint.AreaOf(cutout.Rim)));
        var girth = sewn.Sum(pattern => pattern.Runs.Sum(run => run.LengthMm) + pattern.Cutouts.Sum(cutout => cutout.Run.LengthMm));

        // Chords of the drawn curve leave a little out, two thirds of their rise along the rim.
        var curve = sewn.Sum(pattern => pattern.Runs.Where(run => run.Role == "rim").Sum(run => run.LengthMm) + pattern.Cutouts.Sum(cutout => cutout.Run.LengthMm)) * OnOutline * 2 / 3;
        if (!(Math.Abs(area - truth) <= Math.Max(AreaShare * truth, (CornerError * girth / 2) + curve)))
        {
            faults.Add(FormattableString.Invariant($"The {what} covers {area} mm2, not {truth} mm2."));
        }
    }
}
