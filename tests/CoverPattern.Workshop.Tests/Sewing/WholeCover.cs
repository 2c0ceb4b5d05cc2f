using System;
using System.Collections.Generic;
using System.Linq;
using CoverPattern.Patterns.Jobs;

namespace CoverPattern.Workshop.Tests.Sewing;

/// <summary>Sews a whole order up, from pieces.json alone: cover with all openings, what closes them, roof, liner, pads, bag.</summary>
internal sealed class WholeCover
{
    private readonly SewnFile file;
    private readonly WholeOrder order;
    private readonly SewnFile outer;
    private readonly Dictionary<string, SewnPattern> patterns;

    private WholeCover(SewnFile file, WholeOrder order)
    {
        (this.file, this.order) = (file, order);
        outer = file.Only(piece => piece.Label[0] is not ('I' or RoofWish.ScreenLetter));
        patterns = file.Patterns.ToDictionary(pattern => pattern.Id, StringComparer.Ordinal);
    }

    /// <summary>Everything that does not fit, with what part of the order it belongs to; empty when all can be sewn.</summary>
    internal static IReadOnlyList<string> Faults(string text, WholeOrder order)
    {
        var whole = new WholeCover(SewnFile.Read(text), order);
        (string Part, IEnumerable<string> Faults)[] parts =
        [
            ("cover", OpenedCover.Faults(whole.outer, order.Cover, order.Openings)),
            ("partners", whole.PartnerFaults()),
            .. order.Wishes.Select(wish => (wish.Key, whole.FillFaults(wish.Key, wish.Value))),
            ("windows", whole.WindowsFaults()),
            .. order.Pipes.Select(pipe => (pipe.Key, PipedCover.OfPipe(whole.OwnOf(pipe.Key), order.Cover, pipe.Value))),
            ("roof", whole.OfRoof()),
            ("liner", whole.OfLiner(text)),
            ("pads", whole.OfPads()),
            ("bag", whole.OfBag()),
        ];
        return [.. parts.SelectMany(part => part.Faults.Select(fault => $"{part.Part}: {fault}"))];
    }

    private SewnFile OwnOf(string label) => outer.Only(piece => OpeningOrder.IsNamedFor(piece.Label, label));

    /// <summary>Partners name each other, lie on one shell, and are equally long along the drawn line.</summary>
    private IEnumerable<string> PartnerFaults()
    {
        var pieces = file.Pieces.ToDictionary(piece => piece.Label, StringComparer.Ordinal);
        foreach (var piece in file.Pieces)
        {
            foreach (var (run, i) in piece.Runs.Select((run, i) => (run, i)).Where(entry => entry.run.Partner is not null))
            {
                if (!pieces.TryGetValue(run.Partner!, out var other) || other.Runs.ElementAtOrDefault(run.PartnerRun) is not { } back || (back.Partner, back.PartnerRun, back.Arc) != (piece.Label, i, run.Arc) || (piece.Label[0] == 'I') != (other.Label[0] == 'I'))
                {
                    yield return $"{piece.Label} run {i} is joined to {run.Partner}, which is not joined to it.";
                }
                else if (!(Math.Abs(LengthOf(piece, i) - LengthOf(other, run.PartnerRun)) <= Tolerances.PartnerLength))
                {
                    yield return FormattableString.Invariant($"{run.Arc}: {LengthOf(piece, i)} mm of {piece.Label} meet {LengthOf(other, run.PartnerRun)} mm of {other.Label}.");
                }
            }
        }
    }

    private double LengthOf(SewnPiece piece, int run) => patterns[piece.Pattern].PathOf(run) is var path ? path.Skip(1).Select((point, i) => path[i].DistanceTo(point)).Sum() : 0;

    private IEnumerable<string> FillFaults(string label, OpeningWish wish)
    {
        (string Letter, string Kind)[] all = [("f", wish.Flap is null ? string.Empty : "flap"), ("p", wish.Sheet is null ? string.Empty : "pane"), ("s", wish.Screen is null ? string.Empty : "screen")];
        var parts = all.Where(part => part.Kind.Length > 0).OrderBy(part => wish.Kind == OpeningKind.HighVent && part.Letter == "f").ToArray();
        if (parts.Length == 0)
        {
            return [];
        }

        var opening = order.Openings.Single(one => one.Label == label);
        var own = outer.Only(piece => piece.Facets.Count > 0 || OpeningOrder.IsNamedFor(piece.Label, label));
        return FilledOpening.Faults(own, new FillOrder(parts, JoinsOf(opening, wish), TrueOpening.AreaOf(order.Cover, opening))
        {
            Label = label,
            TurnUnder = wish.TurnUnder.Millimetres,
            Lap = wish.Lap.Millimetres,
            AreaError = (opening.Size.Width + opening.Size.Height) * 2 * ((opening.Corner > 0 ? 0.02 : 0) + 0.0007) / (opening.IsCarried ? 1 : LeastSeen),
            HasLeaves = wish.Opens == OpensAt.Middle,
            Zips = order.Fittings.IsEmpty ? null : [.. order.Fittings.Where(fitting => fitting.What == "zip" && OpeningOrder.IsNamedFor(fitting.Label, label)).Select(zip => (zip.Label[label.Length..(label.Length + 1)], zip.LengthMm))],
        });
    }

    // A facet turned farther away is not projected onto, by the openings' page: the cosine of 75 degrees.
    private const double LeastSeen = 0.25;

    /// <summary>How each arc is held: a jamb is as long as all arcs from its foot to where the outline's straight side ends.</summary>
    private string[] JoinsOf(OpeningOrder opening, OpeningWish wish)
    {
        var held = wish.Held switch { JoinKind.Zip => "zip", JoinKind.HookLoop => "hookLoop", JoinKind.Ring => "ring", _ => "sewn" };
        if (wish.Kind is OpeningKind.Window or OpeningKind.HighVent)
        {
            return [held];
        }

        var lengths = outer.Pieces.Where(piece => piece.Facets.Count > 0)
            .SelectMany(piece => piece.Runs.Select((run, i) => (run.Arc, patterns[piece.Pattern].RunOf(i).LengthMm)))
            .Where(run => opening.Owns(run.Arc)).OrderBy(run => FillOrder.NumberOf(run.Arc)).Select(run => run.LengthMm).ToArray();
        var head = opening.Size.Width - (2 * opening.Corner) + (Math.PI * opening.Corner);
        var jamb = (lengths.Sum() - head) / 2;
        bool Opens(double along) => wish.Opens switch
        {
            OpensAt.Around => true,
            OpensAt.Middle => false,
            OpensAt.Right => along < jamb,
            OpensAt.Left => along > jamb + head,
            _ => along < jamb || along > jamb + head,
        };
        return [.. lengths.Select((length, i) => Opens(lengths.Take(i).Sum() + (length / 2)) ? held : "sewn")];
    }

    /// <summary>Round windows: their rings, and that panes and screens of one size are one drawing.</summary>
    private IEnumerable<string> WindowsFaults() => order.Sewing.Windows.Count == 0
        ? []
        : WindowFaults.OfWindows(outer.Only(piece => piece.Facets.Count > 0 || piece.Label[0] == 'W'), order.Sewing, order.Cover);

    private IEnumerable<string> OfRoof() => order.Job.Roof is not { } roof
        ? []
        : new RoofFaults(file.Only(piece => piece.Label[0] != 'I'), order.Cover, order.Roof, new RoofOrder(roof.Flap.Millimetres, roof.Tabs.Millimetres, roof.Screen is not null)).Find();

    private IEnumerable<string> OfLiner(string text)
    {
        if (order.Job.Liner is null)
        {
            return file.Pieces.Where(piece => piece.Label[0] == 'I').Select(piece => $"{piece.Label} is of no liner.");
        }

        var (inner, holes) = order.Inner();
        return OpenedCover.Faults(TwoShells.Liner(text), inner, holes);
    }

    private IEnumerable<string> OfPads() => order.Job.Insulation is not { } pads
        ? []
        : PadFaults.Find(outer, order.Sewing.Sizes.Mesh, (order.Job.StandOff.TubeRadius.Millimetres - pads.Tuck.Millimetres, order.Job.StandOff.HubRadius.Millimetres), order.WithoutPads(facet => file.Pieces.Any(piece => piece.Label == "A" + facet[1..])));

    /// <summary>Without sizes in the job those of the pieces have to go together: the body's length, an end's width and height, in whole centimetres.</summary>
    private IEnumerable<string> OfBag()
    {
        if (order.Job.Bag is not { } bag)
        {
            return [];
        }

        (double Width, double Height) BoxOf(string label) => file.Pieces.FirstOrDefault(piece => piece.Label == label) is { } piece && patterns[piece.Pattern].SewLine is var ring
            ? (ring.Max(corner => corner.X) - ring.Min(corner => corner.X), ring.Max(corner => corner.Y) - ring.Min(corner => corner.Y))
            : (double.NaN, double.NaN);
        var (length, (width, height)) = bag.Size is { } size ? (size.Length.Millimetres, (size.Width.Millimetres, size.Height.Millimetres)) : (BoxOf("Y1").Height, BoxOf("Y2"));
        return ExtraFaults.OfBag(outer, length, width, height)
            .Concat(bag.Size is null ? new[] { length, width, height }.Where(side => side % 10 != 0).Select(side => FormattableString.Invariant($"{side} mm are no whole centimetres.")) : []);
    }
}
