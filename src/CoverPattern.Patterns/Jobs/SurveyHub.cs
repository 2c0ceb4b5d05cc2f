using CoverPattern.Geometry;

namespace CoverPattern.Patterns.Jobs;

/// <summary>A hub as somebody measured it.</summary>
/// <param name="Label">Its name in the survey; empty where the survey has no names.</param>
/// <param name="Position">Hub centre, millimetres, as measured: neither moved nor turned.</param>
/// <param name="Place">Where it stands in the survey, such as "line 12" or "corner 3".</param>
public readonly record struct SurveyHub(string Label, Point3 Position, string Place)
{
    /// <summary>How messages name it.</summary>
    public string Name => Label.Length > 0 ? Label : Place;
}
