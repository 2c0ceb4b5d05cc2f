using System.Linq;
using CoverPattern.Geometry;
using CoverPattern.Patterns.Openings;
using CoverPattern.Patterns.Seams;

namespace CoverPattern.Patterns.Pieces;

/// <summary>A panel of what lies inside a rim, as the pieces that fill or cover it are drawn.</summary>
internal static class InsidePanel
{
    /// <summary>The turn that brings the region's up to +y.</summary>
    internal static RigidMap Upright(Region region, Subdivision inside, Panel panel)
    {
        var at = Enumerable.Range(0, panel.Patches.Length).Where(i => inside.Patches[panel.Patches[i]].Face == region.Centre.Face).DefaultIfEmpty(0).First();
        var map = panel.FlatMaps[at] with { Shift = default };
        var up = map.Apply(region.Up);
        return new RigidMap(up.Y, up.X, default, Mirrored: false);
    }

    /// <summary>A fold of the panel, turned.</summary>
    internal static FoldLine Fold(Subdivision inside, Panel panel, int fold, RigidMap turn)
    {
        var side = inside.Arcs[fold].First;
        var map = turn.After(panel.FlatMaps[panel.Patches.IndexOf(side.Patch)]);
        var corners = inside.Patches[side.Patch].Corners;
        return new FoldLine(map.Apply(corners[side.Edge]), map.Apply(corners[(side.Edge + 1) % corners.Length]));
    }
}
