using System;
using System.Collections.Immutable;
using System.Linq;
using CoverPattern.Patterns.Jobs;
using CoverPattern.Patterns.Seams;
using CoverPattern.Patterns.Shells;

namespace CoverPattern.Patterns.Tests.Seams;

public class CrossingFinderTests
{
    [Fact]
    public void Find_ThreeVFiveEighths_HasTheHubsOfTheFrame()
    {
        // 61 hubs, 15 of them at the base, 165 struts: own calculation made apart from this project. Of the twelve corners
        // of the solid six lie above the cut: there five struts meet, at the other 40 inner hubs six.
        var (_, _, crossings) = Crossings(3, 5, 60);

        var inner = crossings.Where(crossing => crossing.Place == CrossingPlace.Hub).ToArray();
        Assert.Equal((6, 40), (inner.Count(crossing => crossing.Arcs.Length == 5), inner.Count(crossing => crossing.Arcs.Length == 6)));
        Assert.Equal(15, crossings.Count(crossing => crossing.Place == CrossingPlace.BaseHub));
        Assert.Equal(15, crossings.Count(crossing => crossing.Place == CrossingPlace.Foot));
        Assert.Equal(61, crossings.Count(crossing => crossing.Label.StartsWith('H') && !crossing.Label.EndsWith('f')));
    }

    [Theory]
    [InlineData(1, 2, 60)]
    [InlineData(2, 3, 0)]
    [InlineData(3, 5, 60)]
    [InlineData(3, 5, 3)]
    [InlineData(4, 7, 0)]
    [InlineData(5, 8, 20)]
    public void Find_AnyDome_EveryCornerOnceAndEveryArcTwice(int frequency, int rows, double drop)
    {
        var (_, cut, crossings) = Crossings(frequency, rows, drop);

        var corners = crossings.SelectMany(crossing => crossing.Corners).ToArray();
        Assert.Equal(cut.Patches.Sum(patch => patch.Corners.Length), corners.Length);
        Assert.Equal(corners.Length, corners.Distinct().Count());
        var uses = crossings.SelectMany(crossing => crossing.Arcs).GroupBy(arc => arc).ToDictionary(group => group.Key, group => group.Count());
        Assert.Equal(cut.Arcs.Length, uses.Count);
        Assert.All(uses.Values, count => Assert.Equal(2, count));
        Assert.Equal(crossings.Length, crossings.Select(crossing => crossing.Label).Distinct(StringComparer.Ordinal).Count());
    }

    /// <summary>Neighbours follow by identity; whether they lie counter-clockwise round one point of space is seen apart from that.</summary>
    [Theory]
    [InlineData(3, 5, 60)]
    [InlineData(4, 7, 3)]
    public void Find_AtANode_FacesFollowCounterClockwiseRoundOnePoint(int frequency, int rows, double drop)
    {
        var (shell, cut, crossings) = Crossings(frequency, rows, drop);

        foreach (var crossing in crossings.Where(crossing => crossing.Place != CrossingPlace.Edge))
        {
            var node = shell.Nodes.Single(node => node.Label == crossing.Label);
            foreach (var corner in crossing.Corners)
            {
                var face = shell.Faces[cut.Patches[corner.Patch].Face];
                Assert.Contains(face.Nodes, at => shell.Nodes[at] == node);
            }

            // A face's corner has its first edge to the right: the second edge of each is the first of the next.
            var closes = crossing.Arcs.Length == crossing.Corners.Length;
            for (var i = 0; i < crossing.Corners.Length; i++)
            {
                var (patch, edge) = (cut.Patches[crossing.Corners[i].Patch], crossing.Corners[i].Edge);
                Assert.Equal(crossing.Arcs[i], patch.Arcs[edge]);
                Assert.Equal(closes ? crossing.Arcs[(i + 1) % crossing.Arcs.Length] : crossing.Arcs[i + 1], patch.Arcs[(edge + patch.Arcs.Length - 1) % patch.Arcs.Length]);
            }

            Assert.Equal(crossing.Arcs.All(arc => cut.Arcs[arc].Role != EdgeRole.Hem), closes);
        }
    }

    /// <summary>
    /// The shop asks for crossings to be staggered by 100 mm where no hub forces them. Single facets and whole panels end in hubs
    /// by construction: away from hubs no two seams meet at all.
    /// </summary>
    [Theory]
    [InlineData(2, 3, 60)]
    [InlineData(3, 5, 0)]
    [InlineData(4, 7, 3)]
    [InlineData(6, 10, 30)]
    public void Find_AwayFromHubs_NoTwoSeamsMeet(int frequency, int rows, double drop)
    {
        var (_, cut, crossings) = Crossings(frequency, rows, drop);

        var elsewhere = crossings.Where(crossing => crossing.Place is CrossingPlace.Foot or CrossingPlace.Edge).ToArray();
        Assert.NotEmpty(elsewhere);
        Assert.All(elsewhere, crossing => Assert.InRange(crossing.Arcs.Count(arc => cut.Arcs[arc].Role == EdgeRole.Seam), 0, 1));
    }

    private static (Shell Shell, Subdivision Cut, ImmutableArray<Crossing> Crossings) Crossings(int frequency, int rows, double drop)
    {
        var job = Jobs.Dome(frequency, rows, 3657.6) with { Skirt = new SkirtWish(Jobs.Mm(drop)) };
        var shell = Jobs.Shell(job);
        var cut = Subdivider.Cut(shell, SeamPlanner.Plan(job, shell, PanelPlan.SingleFacets(shell)));
        return (shell, cut, CrossingFinder.Find(shell, cut));
    }
}
