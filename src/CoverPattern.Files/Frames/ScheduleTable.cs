using System.Collections.Immutable;

namespace CoverPattern.Files.Frames;

/// <summary>A table of the frame paper.</summary>
/// <param name="Title">Its heading.</param>
/// <param name="Heads">One a column.</param>
/// <param name="Rows">Cells of each row.</param>
internal sealed record ScheduleTable(string Title, ImmutableArray<string> Heads, ImmutableArray<ImmutableArray<string>> Rows);
