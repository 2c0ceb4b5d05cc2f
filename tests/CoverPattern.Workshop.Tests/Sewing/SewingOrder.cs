using System;
using System.Collections.Generic;
using System.Linq;

namespace CoverPattern.Workshop.Tests.Sewing;

/// <summary>What the shop ordered: the numbers that pieces are held to, beside the cover's surface.</summary>
/// <param name="Sizes">The surface.</param>
/// <param name="MakeUp">"plain", "lapped", "felled", "folder-felled", "welded", "split-welded", "bound" or "zip".</param>
/// <param name="SeamWidth">Plain: the allowance; else the finished width, millimetres.</param>
/// <param name="HemAllowance">Depth and turn-under together, millimetres.</param>
/// <param name="Covers">Number of equal covers.</param>
/// <param name="HasFace">Whether the cloth's two sides differ: then no piece may be mirrored.</param>
/// <param name="Grain">How pieces lie to the warp.</param>
internal sealed record SewingOrder(
    CoverSizes Sizes, string MakeUp, double SeamWidth, double HemAllowance, int Covers, bool HasFace, GrainRule Grain)
{
    /// <summary>Behind the name of a felled seam that is plain from end to end, for it would stop too soon.</summary>
    internal const string SewnPlain = " sewn plain";

    private const string Closing = ", closing";

    /// <summary>What is cut as one piece.</summary>
    internal SewnPlan Plan { get; init; } = SewnPlan.Single;

    /// <summary>Round windows of one cover.</summary>
    internal IReadOnlyList<WindowOrder> Windows { get; init; } = [];

    /// <summary>The job's name for the make-up of all seams but <see cref="Others"/>.</summary>
    internal string Name { get; init; } = MakeUp;

    /// <summary>Seams made otherwise than the rest; of two that fit the later holds.</summary>
    internal IReadOnlyList<OrderedMakeUp> Others { get; init; } = [];

    /// <summary>Allowance of both sides of the seam at the rear that is sewn last, millimetres; null where there is none.</summary>
    internal double? ClosingMm { get; init; }

    /// <summary>Depth of the hem without turn-under, millimetres.</summary>
    internal double HemDepth { get; init; }

    /// <summary>Whether felled seams stop short of hubs.</summary>
    internal bool StopsAtHubs { get; init; }

    /// <summary>Whether corners between seams are trimmed close to the sew line.</summary>
    internal bool IsTrimmed { get; init; }

    /// <summary>Distance of ties from their hub along the seam, millimetres; null when none were ordered.</summary>
    internal double? TieDistance { get; init; }

    /// <summary>How high a splash band reaches above the finished edge, millimetres; null where there is none.</summary>
    internal double? SplashMm { get; init; }

    /// <summary>Whether marks are pierced where a hole is covered.</summary>
    internal bool Pierces { get; init; }

    /// <summary>Patches over each hub that has room for one.</summary>
    internal int PatchesAtHub { get; init; }

    /// <summary>The make-up of a seam, as the job names it.</summary>
    /// <param name="isRow">Whether it lies between two rows; else it is an upright.</param>
    /// <param name="isClosing">Whether it is a part of the seam that is sewn last.</param>
    internal string NameOf(bool isRow, bool isClosing) =>
        Others.Prepend(Rest()).Last(makeUp => makeUp.Where is "all" || makeUp.Where == (isRow ? "rows" : "uprights")).Name + (isClosing ? Closing : string.Empty);

    /// <summary>Cloth beyond the sew line of a seam, by the table of the job's make-ups; NaN for a name that was not ordered.</summary>
    internal double AllowanceOf(string name, string side)
    {
        var own = Find(name)?.AllowanceOf(side) ?? double.NaN;
        return name.EndsWith(Closing, StringComparison.Ordinal) ? Math.Max(own, ClosingMm ?? double.NaN) : own;
    }

    /// <summary>Whether seams of a make-up stop short of hubs where that is ordered: felled ones, but for the seam that is sewn last.</summary>
    internal bool Stops(string name) => StopsAtHubs
        && Find(WithoutPlain(name))?.Form is "felled" or "folder-felled"
        && !WithoutPlain(name).EndsWith(Closing, StringComparison.Ordinal);

    /// <summary>Width of a make-up.</summary>
    internal double WidthOf(string name) => Find(WithoutPlain(name))?.Width ?? double.NaN;

    private static string WithoutPlain(string name) => name.EndsWith(SewnPlain, StringComparison.Ordinal) ? name[..^SewnPlain.Length] : name;

    /// <summary>Whether edges of a make-up may never be slit.</summary>
    internal bool IsNeverSlit(string name) => Find(name)?.Form is "welded" or "split-welded" or "bound";

    /// <summary>Between wall and roof cloth is turned back by 20 mm on both sides.</summary>
    private static readonly OrderedMakeUp RoofZip = new("roof", "roof zip", "zip", 20);

    private OrderedMakeUp Rest() => new("all", Name, MakeUp, SeamWidth);

    private OrderedMakeUp? Find(string name) => name == RoofZip.Name ? RoofZip : Others.Prepend(Rest())
        .FirstOrDefault(makeUp => makeUp.Name == (name.EndsWith(Closing, StringComparison.Ordinal) ? name[..^Closing.Length] : name));
}

/// <summary>How pieces lie to the warp.</summary>
internal enum GrainRule
{
    /// <summary>The warp runs along the facet's ring edge, either way.</summary>
    EitherWay,

    /// <summary>The warp runs counter-clockwise round the dome on every piece.</summary>
    OneWay,

    /// <summary>The grain line is advice.</summary>
    Free,
}
