using System.Collections.Immutable;

namespace CoverPattern.Patterns.Jobs;

/// <summary>How some facets of the cover are made up into panels.</summary>
/// <param name="Form">What becomes of the facets.</param>
/// <param name="Rows">Their rows; null where facets are named, and for the rows that no other wish takes.</param>
public sealed record PanelWish(PanelForm Form, RowRange? Rows = null)
{
    /// <summary>Labels of the facets, such as "F1.07"; empty where rows are meant.</summary>
    public ImmutableArray<string> Facets { get; init; } = [];

    /// <summary>What a group is called; its piece's label. Empty: it is numbered.</summary>
    public string Name { get; init; } = string.Empty;

    /// <summary>Parts into which each row of bands is cut; null: at the sector edges, or as <see cref="At"/> and <see cref="Longest"/> say.</summary>
    public int? Parts { get; init; }

    /// <summary>Struts along which bands are cut, such as "H0.02-H1.01"; repeated in every sector.</summary>
    public ImmutableArray<string> At { get; init; } = [];

    /// <summary>Longest part of a band, sew line to sew line; null: no limit.</summary>
    public Measure? Longest { get; init; }

    /// <summary>Struts along which gores (in every sector) and groups are slit.</summary>
    public ImmutableArray<string> Slits { get; init; } = [];
}
