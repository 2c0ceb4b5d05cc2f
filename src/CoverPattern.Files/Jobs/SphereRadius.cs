using System.Linq;
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
        _ => OfCap(FrameBuilder.Build(wish)),
    };

    /// <summary>From the cap above the lowest hubs: its height h and its floor's radius r give (h^2 + r^2) / 2h.</summary>
    private static double OfCap(Frame frame)
    {
        var height = frame.Hubs.Max(hub => hub.Position.Z);
        var floor = frame.Hubs.MinBy(hub => hub.Position.Z)!.Position.Plan.Length;
        return ((height * height) + (floor * floor)) / (2 * height);
    }
}
