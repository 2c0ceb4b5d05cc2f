using System;
using System.Collections.Generic;
using System.Collections.Immutable;
using System.Linq;
using CoverPattern.Geometry;
using CoverPattern.Lays.Nesting;
using CoverPattern.Patterns.Jobs;
using CoverPattern.Patterns.Pieces;

namespace CoverPattern.Lays;

/// <summary>Lays searched on from earlier ones; each holds the pieces that it held, the last also those that are new.</summary>
/// <param name="job">How to lay; it names the earlier lays.</param>
/// <param name="cloth">The cloth.</param>
/// <param name="maker">Makes tasks and lays of it.</param>
/// <param name="patterns">Patterns by their ids.</param>
/// <param name="nest">Places outlines on a strip.</param>
internal sealed class ContinuedLays(
    Job job, Cloth cloth, LayMaker maker, Dictionary<string, Pattern> patterns, Func<NestingTask, NestingLayout> nest)
{
    /// <summary>The lays, in the order of the earlier ones.</summary>
    /// <exception cref="EarlierLaysRefusedException">Locked pieces cannot stay, or a lay no longer goes on its roll or the table.</exception>
    public ImmutableArray<Lay> Lay(ImmutableArray<EarlierLay> earlier, Piece[] pieces)
    {
        var layOf = earlier.SelectMany((lay, i) => lay.Places.Select(place => (place.Piece, i))).DistinctBy(entry => entry.Piece, StringComparer.Ordinal).ToDictionary(entry => entry.Piece, entry => entry.i, StringComparer.Ordinal);
        var sets = pieces.ToLookup(piece => layOf.GetValueOrDefault(piece.Label, earlier.Length - 1));
        ImmutableArray<Lay> lays = [.. earlier.Select((lay, i) => (Earlier: lay, Pieces: sets[i].ToArray())).Where(set => set.Pieces.Length > 0).Select(set => LayOne(set.Earlier, set.Pieces))];
        var tooLong = OrderProof.Check(job with { Lay = job.Lay with { Locked = [] } }, lays, new PieceSet([.. patterns.Values], [.. pieces])).Where(finding => finding.Fault is LayFault.TooLong or LayFault.NotAsAsked).ToImmutableArray();
        return tooLong.IsEmpty ? lays : throw Refused(tooLong);
    }

    private Lay LayOne(EarlierLay earlier, Piece[] pieces)
    {
        ImmutableArray<PieceStack> stacks = [.. pieces.Select(piece => new PieceStack([piece], PieceGrades.Of(job.Lay, piece, patterns[piece.Pattern])))];
        var kinds = LayMaker.Kinds(stacks);
        var spot = LaySpot.On(cloth, earlier.Roll <= cloth.Rolls.Length ? earlier.Roll : 0, earlier.FromMm);
        var task = maker.TaskOf(kinds, spot);
        var places = Places(kinds, earlier);
        var locked = Locked(task, places);
        task = task with { Fixed = [.. locked.Values] };
        var start = EarlierLayout.Of(task, [.. places.Values]);
        var layout = nest(task with { Start = start });
        var lay = maker.Finish(stacks, layout, spot, locked);
        return lay with { Making = lay.Making with { Origin = LayOrigin.Continued } };
    }

    /// <summary>Where the pieces lay, as placements of the task; pieces that lay the other side up have none.</summary>
    private Dictionary<string, NestingPlacement> Places(PieceStack[][] kinds, EarlierLay earlier)
    {
        var itemOf = kinds.SelectMany((kind, item) => kind.Select(stack => (stack.Top, item))).ToDictionary(entry => entry.Top.Label, entry => (entry.item, Mirrored: maker.IsMirrored(entry.Top)), StringComparer.Ordinal);
        return earlier.Places.Where(place => itemOf.TryGetValue(place.Piece, out var own) && own.Mirrored == place.Mirrored).DistinctBy(place => place.Piece, StringComparer.Ordinal)
            .ToDictionary(place => place.Piece, place => new NestingPlacement(itemOf[place.Piece].item, place.TurnDegrees, Grid.Snap(new Point2(place.X, place.Y) - maker.Strip.Origin)), StringComparer.Ordinal);
    }

    private Dictionary<string, NestingPlacement> Locked(NestingTask task, Dictionary<string, NestingPlacement> places)
    {
        var locked = places.Where(place => job.Lay.Locked.Contains(place.Key, StringComparer.Ordinal)).ToDictionary(StringComparer.Ordinal);
        string[] labels = [.. locked.Keys];
        var counted = task with { Items = [.. task.Items.Select((item, i) => item with { Quantity = locked.Values.Count(place => place.Item == i) })] };
        var faults = LayoutCheck.Check(counted, new NestingLayout(0, [.. locked.Values], "locked")).Where(fault => fault.Fault != NestingFault.WrongLength)
            .Select(fault => new LayFinding(LayFault.Moved, labels[fault.First], fault.Second >= 0 ? labels[fault.Second] : string.Empty, Text(labels, fault)))
            .ToImmutableArray();
        return faults.IsEmpty ? locked : throw Refused(faults);
    }

    private static string Text(string[] labels, NestingFinding fault) => FormattableString.Invariant($"Locked piece {labels[fault.First]} cannot stay{(fault.Second >= 0 ? " beside " + labels[fault.Second] : string.Empty)}: {fault.Fault switch
    {
        NestingFault.Overlap => "they overlap",
        NestingFault.TooClose => "they are nearer than the spacing",
        NestingFault.WrongTurn => "its turn is not allowed",
        NestingFault.OnFlaw => "it lies on a flaw that it does not bear",
        NestingFault.OffGrid => "its place is not on the grid",
        _ => "it reaches over an edge of the usable width or into the end allowance",
    }}.");

    private EarlierLaysRefusedException Refused(ImmutableArray<LayFinding> findings) => new(job.Lay.Start!.File, "searched on", findings);
}
