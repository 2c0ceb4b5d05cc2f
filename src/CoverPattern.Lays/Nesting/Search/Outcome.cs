namespace CoverPattern.Lays.Nesting.Search;

/// <summary>How a struggle for a length stands after a sweep.</summary>
internal enum Outcome
{
    /// <summary>Overlaps are left and patience too.</summary>
    Going,

    /// <summary>Nothing overlaps.</summary>
    Solved,

    /// <summary>Patience and strikes are used up; the strip holds the best state seen.</summary>
    GivenUp,
}
