using System;
using System.Collections.Generic;
using System.Collections.Immutable;
using System.Linq;
using CoverPattern.Patterns.Jobs;
using CoverPattern.Patterns.Pieces;

namespace CoverPattern.Workshop.Tests.Sewing;

/// <summary>A whole order in the tests' own numbers: the cover with all its openings, and what closes them.</summary>
/// <param name="Job">As it was ordered.</param>
/// <param name="Sewing">Seams and surface.</param>
/// <param name="Cover">The true cover.</param>
internal sealed record WholeOrder(Job Job, SewingOrder Sewing, TrueCover Cover)
{
    /// <summary>Openings, windows and pipes, as what they take out.</summary>
    internal IReadOnlyList<OpeningOrder> Openings { get; private init; } = [];

    /// <summary>Openings of the job's own list, slits left out, by their label.</summary>
    internal IReadOnlyDictionary<string, OpeningWish> Wishes { get; private init; } = new Dictionary<string, OpeningWish>(StringComparer.Ordinal);

    /// <summary>Pipes by their label.</summary>
    internal IReadOnlyDictionary<string, PipeOrder> Pipes { get; private init; } = new Dictionary<string, PipeOrder>(StringComparer.Ordinal);

    /// <summary>Facets that come off as a roof.</summary>
    internal IReadOnlySet<string> Roof => Job.Roof is not { } roof ? new HashSet<string>(StringComparer.Ordinal)
        : roof.Row is { } row ? Cover.Faces.Keys.Where(face => SewnPlan.RowOf(face) >= row).ToHashSet(StringComparer.Ordinal)
        : roof.Facets.ToHashSet(StringComparer.Ordinal);

    /// <summary>What the shop lists beside cloth.</summary>
    internal ImmutableArray<Fitting> Fittings { get; init; } = [];

    internal static WholeOrder Of(Job job)
    {
        var sewing = SewingJobs.OrderOf(job);
        var cover = TrueCover.Build(sewing.Sizes);
        var wishes = job.Openings.Select((wish, i) => (Label: FormattableString.Invariant($"O{i + 1}"), Wish: wish)).Where(entry => entry.Wish.Kind != OpeningKind.Slit).ToDictionary(entry => entry.Label, entry => entry.Wish, StringComparer.Ordinal);
        var pipes = job.Pipes.Select((wish, i) => (Label: FormattableString.Invariant($"J{i + 1}"), Pipe: PipeOf(wish))).ToDictionary(entry => entry.Label, entry => entry.Pipe, StringComparer.Ordinal);
        return new WholeOrder(job, sewing, cover)
        {
            Wishes = wishes,
            Pipes = pipes,
            Openings =
            [
                .. wishes.Select(entry => OpeningOf(cover, entry.Value) with { Label = entry.Key }),
                .. sewing.Windows.Select((window, i) => RoundOf(window, window.Aperture) with { Label = "R", TurnUnder = window.TurnUnder, HasLayers = true, IsSetByMarks = true }),
                .. pipes.Select(entry => entry.Value.Opening(cover) with { Label = entry.Key }),
            ],
        };
    }

    /// <summary>The liner as an order of its own: its surface, and the holes below the cover's openings.</summary>
    internal (SewingOrder Order, IReadOnlyList<OpeningOrder> Holes) Inner()
    {
        var (liner, order) = (Job.Liner!, SewingJobs.OrderOf(SewingJobs.Inner(Job)));
        var (inner, margin) = (TrueCover.Build(order.Sizes), Job.Liner!.Margin.Millimetres);
        bool IsWanted(string label) => liner.Openings?.Contains(label) ?? true;
        return (order,
        [
            .. Wishes.Where(entry => IsWanted(entry.Key)).Select(entry => Settled(inner, Grown(Placed(inner, entry.Value), margin), entry.Value.Laid)),
            .. Sewing.Windows.Where(window => IsWanted("W" + window.Facet[1..])).Select(window => Grown(RoundOf(window, window.Aperture), margin) with { TurnUnder = window.TurnUnder }),

            // 20 mm beyond the clear distance about the pipe's own middle line, by the liner's page.
            .. Pipes.Values.Select(pipe => pipe.Cylinder(Cover, pipe.Radius + pipe.Clear + 20) with { Middle = 1 / (1 + Job.Ease) * TrueOpening.MiddleOf(Cover, pipe.Cylinder(Cover, 1)) }),
        ]);
    }

    /// <summary>
    /// Whether a hole of the liner crosses one of its folds under less than 10 degrees: what is cut off there has ends that these tests
    /// know no better than the drawn curve by the sine of that angle, and perhaps no other corner to be laid by.
    /// </summary>
    internal bool CrossesLinerFlat => Job.Liner is not null && Inner() is var (inner, holes)
        && TrueOpening.CellsOf(TrueCover.Build(inner.Sizes), holes).Values.SelectMany(list => list).Any(cell => cell.Steepness < Math.Sin(10 * Math.PI / 180));

    /// <summary>Facets without a pad: what an opening or the clear distance of a pipe takes something of.</summary>
    /// <param name="hasPad">Whether a facet has one; it tells where an opening reaches over a strut by less than it may be drawn aside.</param>
    internal string[] WithoutPads(Func<string, bool> hasPad)
    {
        OpeningOrder[] openings = [.. Openings.Where(opening => !Pipes.ContainsKey(opening.Label))];
        var (reached, firmly) = (Taken(openings, 0), Taken([.. openings.Select(opening => Grown(opening, -Tolerances.OnCover))], 0));
        var clear = Taken([.. Pipes.Values.Select(pipe => pipe.Cylinder(Cover, pipe.Radius + pipe.Clear))], 1);
        return [.. Cover.Faces.Values.Where(face => !face.IsSkirt && (firmly.Contains(face.Label) || clear.Contains(face.Label) || (reached.Contains(face.Label) && !hasPad(face.Label)))).Select(face => face.Label)];
    }

    /// <summary>Faces of which openings take more than an area, square millimetres.</summary>
    private HashSet<string> Taken(IReadOnlyList<OpeningOrder> openings, double more) =>
        [.. TrueOpening.CellsOf(Cover, openings).Where(face => Cover.Faces[face.Key].Area - face.Value.Sum(cell => cell.Area) > more).Select(face => face.Key)];

    private static OpeningOrder OpeningOf(TrueCover cover, OpeningWish wish)
    {
        var isSheet = wish.Kind == OpeningKind.Window && wish.Held == JoinKind.Sewn;
        return Settled(cover, Placed(cover, wish), wish.Laid) with
        {
            Lap = isSheet && (wish.Sheet ?? wish.Screen) is not null ? wish.Lap.Millimetres : null,
            FillKind = wish.Sheet is null ? "screen" : "pane",
            HasLayers = !isSheet,
        };
    }

    private static OpeningOrder Placed(TrueCover cover, OpeningWish wish)
    {
        var (outline, place) = (wish.Outline, wish.Place);
        var (facet, right, up) = place.Above is { } above
            ? At(cover, above.Millimetres, place.Towards * Math.PI / 180)
            : (place.Facet, place.Right.Millimetres, place.Up.Millimetres);
        var width = outline.Width.Millimetres;
        return new OpeningOrder(facet, right, up, place.Turned, IsCarried: true)
        {
            Size = (width, outline.Form == OutlineForm.Circle ? width : outline.Height.Millimetres),
            Corner = outline.Form switch { OutlineForm.Circle or OutlineForm.Arch => width / 2, OutlineForm.Rounded => outline.Corner.Millimetres, _ => 0 },
            IsArch = outline.Form == OutlineForm.Arch,
            TurnUnder = wish.TurnUnder.Millimetres,
        };
    }

    /// <summary>Carried where that was asked for, or where no corner of the cover is inside or on the rim; else seen square to the facet.</summary>
    private static OpeningOrder Settled(TrueCover cover, OpeningOrder order, LayingRule rule) => order with
    {
        IsCarried = rule != LayingRule.Projected && (rule == LayingRule.Carried || !(TrueOpening.HoldsCorner(cover, order) || TrueOpening.MeetsCorner(cover, order))),
    };

    private static OpeningOrder Grown(OpeningOrder order, double margin) => order with
    {
        Size = (order.Size.Width + (2 * margin), order.Size.Height + (2 * margin)),
        Corner = order.Corner > 0 ? order.Corner + margin : 0,
    };

    private static OpeningOrder RoundOf(WindowOrder window, double radius) =>
        new(window.Facet, window.Right, window.Up, 0, IsCarried: true) { Size = (2 * radius, 2 * radius), Corner = radius };

    private static PipeOrder PipeOf(PipeWish wish) => new(wish.Place.Facet, wish.Place.Right.Millimetres, wish.Place.Up.Millimetres, wish.Place.Run == PipeRun.Level, wish.Diameter.Millimetres / 2, wish.Clear.Millimetres)
    {
        Gap = wish.Gap.Millimetres,
        Sleeve = wish.Sleeve.Millimetres,
        TurnUnder = wish.TurnUnder.Millimetres,
        Lap = wish.Lap.Millimetres,
        RainFlap = wish.RainFlap.Millimetres,
        ClosingFlap = wish.ClosingFlap.Millimetres,
        Spread = wish.Spread,
    };

    /// <summary>Where a level line from the upright axis leaves the cover, by its facet.</summary>
    private static (string Facet, double Right, double Up) At(TrueCover cover, double height, double towards)
    {
        var (from, along) = (new SpacePoint(0, 0, height), new SpacePoint(Math.Cos(towards), Math.Sin(towards), 0));
        foreach (var face in cover.Faces.Values.Where(face => !face.IsSkirt && face.Outward.Dot(along) > 0))
        {
            var hit = from + (face.Outward.Dot(face.Corners[0] - from) / face.Outward.Dot(along) * along);
            if (face.Corners.Select((corner, i) => (face.Corners[(i + 1) % face.Corners.Count] - corner).Cross(hit - corner).Dot(face.Outward)).All(left => left >= 0))
            {
                var step = hit - WindowShop.Incentre(face.Uncut);
                return (face.Label, step.Dot(face.Round), step.Dot(face.Outward.Cross(face.Round)));
            }
        }

        throw new InvalidOperationException(FormattableString.Invariant($"No facet {height} mm up towards {towards}."));
    }
}
