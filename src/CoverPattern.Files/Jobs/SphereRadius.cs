using CoverPattern.Patterns.Frames;
using CoverPattern.Patterns.Jobs;

namespace CoverPattern.Files.Jobs;

/// <summary>The sphere behind a frame's size.</summary>
internal static class SphereRadius
{
    /// <summary>Radius of the sphere through the hub centres, millimetres.</summary>
    internal static double Of(FrameWish wish) => wish.Measure switch
    {
        FrameMeasure.Radius => wish.Size.Millimetres,
        FrameMeasure.Diameter => wish.Size.Millimetres / 2,
        _ => FrameBuilder.SphereRadius(wish),
    };
}
