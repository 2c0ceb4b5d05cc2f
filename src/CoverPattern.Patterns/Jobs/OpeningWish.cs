using System.Collections.Immutable;

namespace CoverPattern.Patterns.Jobs;

/// <summary>An opening of any outline.</summary>
/// <param name="Outline">Its finished outline.</param>
/// <param name="Place">Where it lies; whole facets have their own place.</param>
/// <param name="Laid">How it is laid over edges.</param>
/// <param name="TurnUnder">Cloth of the cover turned under at its rim, and of a flap beside a zip.</param>
public sealed record OpeningWish(OutlineWish Outline, OpeningPlace Place, LayingRule Laid, Measure TurnUnder)
{
    /// <summary>What it is for.</summary>
    public OpeningKind Kind { get; init; }

    /// <summary>Name of the clear sheet that fills it, among the cloths; null without one.</summary>
    public string? Sheet { get; init; }

    /// <summary>Name of the mesh, among the cloths; null without a screen.</summary>
    public string? Screen { get; init; }

    /// <summary>Name of the cloth of its flap, among the cloths; null without one.</summary>
    public string? Flap { get; init; }

    /// <summary>How far a part that is sewn in, held by hook and loop or by a ring reaches beyond the rim.</summary>
    public Measure Lap { get; init; }

    /// <summary>How what opens is held.</summary>
    public JoinKind Held { get; init; }

    /// <summary>Which sides open, where what fills it is not sewn all round.</summary>
    public OpensAt Opens { get; init; }

    /// <summary>Width of the ring of cloth that holds sheet and screen; null elsewhere.</summary>
    public Measure? Ring { get; init; }

    /// <summary>Finished width of the strip over its zips; null without one.</summary>
    public Measure? Strip { get; init; }

    /// <summary>Finished width of the flap over its upper edge that sheds rain; null without one.</summary>
    public Measure? Drip { get; init; }

    /// <summary>How far the lower edge of the hood over it stands off; null without a hood.</summary>
    public Measure? Hood { get; init; }

    /// <summary>Finished height of the strip across its foot; null without one.</summary>
    public Measure? Threshold { get; init; }

    /// <summary>Width of the webbing along its jambs and head; null without it.</summary>
    public Measure? Webbing { get; init; }

    /// <summary>Struts and hubs that the customer's frame has not where the opening is, because a doubled frame goes round it.</summary>
    public ImmutableArray<string> Doubled { get; init; } = [];

    /// <summary>Whether what fills it is made up along the cover's seams instead of going uncut over them.</summary>
    public bool IsSeamed { get; init; }

    /// <summary>Whether any part of it opens and closes by a zip.</summary>
    public bool HasZips => Held == JoinKind.Zip && (Kind == OpeningKind.Slit || (Sheet ?? Screen ?? Flap) is not null);
}
