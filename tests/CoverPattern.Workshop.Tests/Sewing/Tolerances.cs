namespace CoverPattern.Workshop.Tests.Sewing;

/// <summary>How well sewn things must fit, millimetres.</summary>
internal static class Tolerances
{
    /// <summary>Of a corner from the cover: a tenth of a pen line.</summary>
    internal const double OnCover = 0.05;

    /// <summary>Between the lengths of two partner edges.</summary>
    internal const double PartnerLength = 0.01;

    /// <summary>Between two notches that must meet.</summary>
    internal const double Notch = 0.05;

    /// <summary>Between two statements of one place on a pattern: two steps of its grid of 2^-10 mm.</summary>
    internal const double SamePlace = 0.002;
}
