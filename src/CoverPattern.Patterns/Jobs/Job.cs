using System;
using System.Collections.Immutable;

namespace CoverPattern.Patterns.Jobs;

/// <summary>All that the shop decided about one order; nothing in it was computed.</summary>
/// <param name="SchemaVersion">Version of the job file's form; 1.</param>
/// <param name="Title">What the shop calls the order; printed on papers; may be empty.</param>
/// <param name="Date">Date of the order; the only date that any output carries.</param>
/// <param name="Covers">Number of equal covers, 1 to 1,000.</param>
/// <param name="Frame">The frame to be covered.</param>
/// <param name="StandOff">What holds the cloth off the hub centres.</param>
/// <param name="Ease">Signed ratio by which every length of the finished cover grows.</param>
/// <param name="Skirt">The strip below the base hubs.</param>
/// <param name="Hem">The finished lower edge.</param>
/// <param name="Seam">How pieces are joined.</param>
/// <param name="Cloths">Cloths by use; the first is the cover's.</param>
/// <param name="Lay">How pieces are laid on the roll.</param>
/// <param name="Assumed">What the job left open and the shop's defaults filled.</param>
/// <param name="Confirmed">Places of assumptions that somebody has confirmed, such as "ease".</param>
public sealed record Job(
    int SchemaVersion,
    string Title,
    DateOnly Date,
    int Covers,
    FrameWish Frame,
    StandOffWish StandOff,
    double Ease,
    SkirtWish Skirt,
    HemWish Hem,
    SeamWish Seam,
    ImmutableArray<Cloth> Cloths,
    LayWish Lay,
    ImmutableArray<Assumption> Assumed,
    ImmutableArray<string> Confirmed)
{
    /// <summary>Where the deck or ground lies under the base hubs.</summary>
    public DeckWish Deck { get; init; } = new(DeckDatum.Lowest);

    /// <summary>How facets are made up into panels; empty: each facet is a panel of its own.</summary>
    public ImmutableArray<PanelWish> Panels { get; init; } = [];

    /// <summary>The shop's own table of make-ups; may be empty.</summary>
    public ImmutableArray<MakeUp> MakeUps { get; init; } = [];

    /// <summary>What the work costs; whatever is not stated is not priced.</summary>
    public RatesWish Rates { get; init; } = RatesWish.None;

    /// <summary>How zips, bindings and tapes are sold.</summary>
    public NotionWish Notions { get; init; } = NotionWish.Usual;

    /// <summary>Round windows.</summary>
    public ImmutableArray<WindowWish> Windows { get; init; } = [];

    /// <summary>Openings of any outline.</summary>
    public ImmutableArray<OpeningWish> Openings { get; init; } = [];

    /// <summary>Stove pipes that go through the cover.</summary>
    public ImmutableArray<PipeWish> Pipes { get; init; } = [];

    /// <summary>The inner shell; null without one.</summary>
    public LinerWish? Liner { get; init; }

    /// <summary>Pads between the struts; null without them.</summary>
    public InsulationWish? Insulation { get; init; }

    /// <summary>Facets that come off as a roof; null where the cover is one part.</summary>
    public RoofWish? Roof { get; init; }

    /// <summary>Every make-up that a seam of the cover may bear: the job's own and those of its roof.</summary>
    public ImmutableArray<MakeUp> SeamMakeUps => [.. Seam.Known(), .. Roof is null ? [] : RoofWish.MakeUps];

    /// <summary>Strips along the finished edge that lie on the ground; null without them.</summary>
    public GroundFlapWish? GroundFlap { get; init; }

    /// <summary>The bag that each cover is packed in; null without one.</summary>
    public BagWish? Bag { get; init; }

    /// <summary>Which openings are vents; null where no vent sheet is wished.</summary>
    public VentWish? Vents { get; init; }

    /// <summary>Pieces drawn elsewhere.</summary>
    public ImmutableArray<OutsideWish> Outside { get; init; } = [];

    /// <summary>What openings keep clear.</summary>
    public ClearanceWish Clearances { get; init; } = ClearanceWish.Usual;

    /// <summary>What the shop's machines sew.</summary>
    public LimitWish Limits { get; init; } = LimitWish.Usual;

    /// <summary>What is sewn on at hubs and drawn for it.</summary>
    public MarkWish Marks { get; init; } = MarkWish.Bare;
}
