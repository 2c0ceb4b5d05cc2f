using System.Collections.Generic;

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
    /// <summary>Round windows of one cover.</summary>
    internal IReadOnlyList<WindowOrder> Windows { get; init; } = [];

    /// <summary>Cloth beyond the sew line of a seam, by the table of the job's make-ups.</summary>
    internal double AllowanceOf(string side) => (MakeUp, side) switch
    {
        ("plain", _) => SeamWidth,
        ("lapped" or "split-welded", _) => SeamWidth / 2,
        ("bound" or "zip", _) => SeamWidth,
        ("folder-felled", _) => 1.5 * SeamWidth,
        ("felled", "under") => 2 * SeamWidth,
        ("felled", "over") => SeamWidth,
        ("welded", "under") => SeamWidth,
        ("welded", "over") => 0,
        _ => double.NaN,
    };
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
