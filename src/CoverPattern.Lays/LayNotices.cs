using System;
using System.Collections.Generic;
using System.Collections.Immutable;
using System.Linq;
using CoverPattern.Patterns.Jobs;
using CoverPattern.Patterns.Pieces;

namespace CoverPattern.Lays;

/// <summary>What a person should know of the lays.</summary>
public static class LayNotices
{
    // A lay by hand may take so much more cloth than a tight one before it is told; the bound of the order, no other source.
    private const double MostLonger = 0.03;

    public static ImmutableArray<Notice> Of(Job job, ImmutableArray<Lay> lays, PieceSet pieces)
    {
        ArgumentNullException.ThrowIfNull(job);
        return [.. lays.SelectMany(Longer), .. Unknown(job, pieces), .. job.Cloths.SelectMany((cloth, i) => Rests(cloth, i, lays))];
    }

    private static IEnumerable<Notice> Longer(Lay lay)
    {
        if (lay.Making.TightMm is { } tight && lay.LengthMm > tight * (1 + MostLonger))
        {
            yield return new Notice(
                NoticeLevel.Warning,
                "by-hand-longer",
                lay.Cloth,
                FormattableString.Invariant($"Lay {lay.Number} of {lay.Cloth}, by hand, takes {lay.LengthMm / 1000:0.00} m; a tight one takes {tight / 1000:0.00} m, {100 * (1 - (tight / lay.LengthMm)):0.0} % less. \"lay.style\": \"tight\" saves it."));
        }
    }

    private static IEnumerable<Notice> Unknown(Job job, PieceSet pieces) => PieceGrades.Unknown(job.Lay, pieces).Select(name =>
        new Notice(NoticeLevel.Warning, "no-such-piece", "lay.grades", FormattableString.Invariant($"\"{name}\" in lay.grades is neither a piece nor a kind of piece of this cover: nothing is laid on flaws for it.")));

    /// <summary>What is left on each roll whose length is known.</summary>
    private static IEnumerable<Notice> Rests(Cloth cloth, int index, ImmutableArray<Lay> lays) => cloth.Rolls.Select((roll, k) => (Roll: roll, Number: k + 1)).Where(entry => entry.Roll.Length is not null).Select(entry =>
    {
        var used = lays.Where(lay => lay.Roll == entry.Number && string.Equals(lay.Cloth, cloth.Name, StringComparison.Ordinal)).Sum(lay => lay.ClothMm);
        var name = entry.Roll.Name.Length > 0 ? FormattableString.Invariant($"{entry.Number} ({entry.Roll.Name})") : FormattableString.Invariant($"{entry.Number}");
        return new Notice(
            NoticeLevel.Note,
            "roll-rest",
            FormattableString.Invariant($"cloths[{index}].rolls[{entry.Number - 1}]"),
            FormattableString.Invariant($"Roll {name} of {cloth.Name}: {used / 1000:0.00} m of {entry.Roll.Length!.Value.Millimetres / 1000:0.00} m are used, {(entry.Roll.Length!.Value.Millimetres - used) / 1000:0.00} m are left."));
    });
}
