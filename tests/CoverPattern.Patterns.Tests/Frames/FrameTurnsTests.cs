using System;
using System.Linq;
using CoverPattern.Geometry;
using CoverPattern.Patterns.Frames;

namespace CoverPattern.Patterns.Tests.Frames;

public class FrameTurnsTests
{
    [Theory]
    [InlineData(1, 2)]
    [InlineData(3, 5)]
    [InlineData(8, 13)]
    public void Find_Icosahedron_HasFiveTurns(int frequency, int rows)
    {
        var frame = FrameBuilder.Build(Jobs.Dome(frequency, rows, 3000).Frame);

        var turns = FrameTurns.Find(frame);

        // A vertex-up icosahedron comes onto itself every 72 degrees.
        Assert.Equal(5, turns.Length);
        Assert.All(turns, turn => Assert.Equal(0, (turn.Angle * 5 / (2 * Math.PI)) - Math.Round(turn.Angle * 5 / (2 * Math.PI)), 1e-9));
        foreach (var (turn, hub) in turns.SelectMany(turn => Enumerable.Range(0, frame.Hubs.Length).Select(hub => (turn, hub))))
        {
            var (from, to) = (frame.Hubs[hub].Position, frame.Hubs[turn.Hubs[hub]].Position);
            var at = new Point3((Math.Cos(turn.Angle) * from.X) - (Math.Sin(turn.Angle) * from.Y), (Math.Sin(turn.Angle) * from.X) + (Math.Cos(turn.Angle) * from.Y), from.Z);
            Assert.Equal(0, Point3.Distance(at, to), 1e-6);
        }

        Assert.All(turns, turn => Assert.Equal(Enumerable.Range(0, frame.Facets.Length), turn.Facets.Order()));
    }

    [Fact]
    public void Find_OneHubMoved_LeavesOnlyTheTurnByNothing()
    {
        var frame = FrameBuilder.Build(Jobs.Dome(2, 3, 3000).Frame);
        var hub = frame.Hubs[12];

        var moved = frame with { Hubs = frame.Hubs.SetItem(12, hub with { Position = hub.Position + new Point3(0, 0, 5) }) };

        Assert.Equal(0, Assert.Single(FrameTurns.Find(moved)).Angle);
    }
}
