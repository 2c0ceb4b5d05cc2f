using System;
using System.Collections.Generic;
using System.Collections.Immutable;
using System.Linq;
using CoverPattern.Patterns.Jobs;
using CoverPattern.Patterns.Pieces;

namespace CoverPattern.Lays.Estimates;

/// <summary>Counts bindings, zips, ties and what goes along the hem, as sewn and as it is bought.</summary>
internal static class NotionCounter
{
    // Tape of a tie: two tails, millimetres; common practice, no source.
    private const double TieLength = 2 * 300;
    private const double TieWidth = 25;

    // Binding of raw edges of the hem: 12 mm seen, edges turned in as those of a bound seam; common practice, no source.
    private const double HemBindingSeen = 12;

    // A length that is a multiple but for rounding is not rounded up to the next one, millimetres: the grid and double arithmetic.
    private const double Rounding = 0.01;

    /// <summary>Counts what the given seams and hems take.</summary>
    /// <param name="job">Its make-ups and hem say what is taken; how it is sold.</param>
    /// <param name="covers">Their seams and hems, cover by cover.</param>
    /// <param name="ties">Number of ties on all of them.</param>
    /// <param name="fittings">What goes on their openings.</param>
    internal static ImmutableArray<NotionEstimate> Count(Job job, SewnLengths[] covers, int ties, ImmutableArray<Fitting> fittings)
    {
        ImmutableArray<MakeUp> makeUps = [.. job.Seam.Known(), .. job.Liner is null ? [] : LinerWish.MakeUps];
        return
        [
            .. from seam in covers.SelectMany(cover => cover.Seams).GroupBy(seam => seam.MakeUp, seam => seam.LengthMm, StringComparer.Ordinal).OrderBy(made => made.Key, StringComparer.Ordinal)
               let makeUp = makeUps.FirstOrDefault(known => string.Equals(known.Name, seam.Key, StringComparison.Ordinal))
               where makeUp?.Form is MakeUpForm.Bound or MakeUpForm.Zip
               // Roof and wall of a liner come off each by itself.
               select makeUp.Form == MakeUpForm.Zip ? Zips(job.Notions, seam.Key, [.. seam]) with { IsSeparating = LinerWish.MakeUps.Contains(makeUp) } : Tape(job.Notions, ("binding", seam.Key), [.. seam], makeUp.BindingMm),
            .. AlongHem(job, [.. covers.Select(cover => HemCount.Of(job.Hem, cover.Hems))]),
            .. fittings.GroupBy(fitting => (fitting.What, fitting.WidthMm, fitting.IsSeparating)).Select(kind => Fittings(job.Notions, kind.Key, [.. kind.Select(fitting => fitting.LengthMm)])),
            .. ties > 0 ? [new NotionEstimate("tie", string.Empty, ties, ties * TieLength, TieWidth) { BuyMm = RoundUp(ties * TieLength, job.Notions.TapeStep) }] : ImmutableArray<NotionEstimate>.Empty,
        ];
    }

    private static NotionEstimate Zips(NotionWish sold, string makeUp, double[] lengths)
    {
        var bought = lengths.Select(length => sold.SoldZipMm(length)).Order().ToArray();
        return new NotionEstimate("zip", makeUp, lengths.Length, lengths.Sum(), 0)
        {
            BuyMm = bought.Sum(),
            Sizes = [.. bought.CountBy(length => length).Select(size => new NotionSize(size.Key, size.Value))],
            Stops = 2 * lengths.Length,
        };
    }

    private static NotionEstimate Fittings(NotionWish sold, (string What, double WidthMm, bool IsSeparating) kind, double[] lengths) =>
        kind.What == Fitting.Zip ? Zips(sold, sold.ZipType, lengths) with { IsSeparating = kind.IsSeparating } : Tape(sold, (kind.What, string.Empty), lengths, kind.WidthMm);

    private static NotionEstimate Tape(NotionWish sold, (string What, string MakeUp) name, double[] lengths, double width) =>
        new(name.What, name.MakeUp, lengths.Length, lengths.Sum(), width)
        {
            BuyMm = RoundUp(lengths.Sum() + (lengths.Length * sold.TapeEnds.Millimetres), sold.TapeStep),
        };

    /// <summary>Webbing runs round each cover in one length; binding goes over every gap of a sleeve.</summary>
    private static IEnumerable<NotionEstimate> AlongHem(Job job, HemCount[] hems)
    {
        if (hems.Any(hem => hem.WebbingMm > 0))
        {
            yield return Tape(job.Notions, ("webbing", string.Empty), [.. hems.Select(hem => hem.WebbingMm)], job.Hem.Webbing?.Millimetres ?? 0);
        }

        if (hems.Any(hem => hem.BoundMm > 0))
        {
            var binding = MakeUp.Of(MakeUpForm.Bound, new Measure(HemBindingSeen, string.Empty)).BindingMm;
            yield return Tape(job.Notions, ("hem binding", string.Empty), [.. hems.SelectMany(hem => Enumerable.Repeat(hem.BoundMm / hem.Gaps, hem.Gaps))], binding);
        }
    }

    private static double RoundUp(double length, Measure step) => step.Millimetres * Math.Ceiling((length - Rounding) / step.Millimetres);
}
