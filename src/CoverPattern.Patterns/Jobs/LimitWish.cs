namespace CoverPattern.Patterns.Jobs;

/// <summary>What the shop's machines sew.</summary>
/// <param name="Thickness">Greatest thickness under the needle; positive.</param>
/// <param name="FelledSeamsAtHub">Most seams that meet at a hub when felled seams run into it.</param>
/// <param name="SeamsAtHub">Most seams that meet at a hub otherwise: plain or welded, or felled ones stopped short under a patch.</param>
/// <param name="SeamsElsewhere">Most seams that meet where no hub is.</param>
public sealed record LimitWish(Measure Thickness, int FelledSeamsAtHub, int SeamsAtHub, int SeamsElsewhere)
{
    /// <summary>8 mm; 4, 6 and 3 seams: common practice, no source.</summary>
    public static LimitWish Usual { get; } = new(new Measure(8, "8 mm"), 4, 6, 3);
}
