using System.Collections.Immutable;

namespace CoverPattern.Files.Reports;

/// <summary>A view of the whole cover.</summary>
/// <param name="Figure">The drawing.</param>
/// <param name="Seen">Labels of the facets that are drawn.</param>
/// <param name="Unlabelled">Labels of facets that are drawn but too small on paper for their label.</param>
/// <param name="Scale">One to how many; 0 when the drawing is not to scale.</param>
internal sealed record DomeView(Figure Figure, ImmutableArray<string> Seen, ImmutableArray<string> Unlabelled, double Scale);
