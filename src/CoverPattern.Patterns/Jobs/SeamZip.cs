namespace CoverPattern.Patterns.Jobs;

/// <summary>A zip that takes a part of a seam's length, so that the seam opens there.</summary>
/// <param name="Strut">The strut that the seam runs over, such as "H0.02-H1.01".</param>
/// <param name="From">From the hub named first to where the zip begins, along the finished cover.</param>
/// <param name="Length">Length of its teeth.</param>
public sealed record SeamZip(string Strut, Measure From, Measure Length)
{
    /// <summary>Cloth turned back on each side beyond the middle of the teeth: as that of a seam by zip, common practice, no source.</summary>
    public static MakeUp MakeUp { get; } = MakeUp.Of(MakeUpForm.Zip, new Measure(20, "20 mm")) with { Name = "zip in a seam" };
}
