using System.Collections.Immutable;

namespace CoverPattern.Patterns.Openings;

/// <summary>A line beside a region that is drawn on the cloth: where something sewn on comes to lie.</summary>
/// <param name="Purpose">What it shows, for people, such as "rain flap".</param>
/// <param name="Line">The line face by face.</param>
public sealed record RegionMark(string Purpose, ImmutableArray<RimStretch> Line);
