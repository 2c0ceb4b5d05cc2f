using System;
using System.Linq;

namespace CoverPattern.Workshop.Tests.Sewing;

public class TrueCoverTests
{
    /// <summary>Areas of frames on the unit sphere and numbers of facets: own calculation of the check tables, part 9.</summary>
    [Theory]
    [InlineData(1, 2, 15, 7.180906)]
    [InlineData(2, 3, 40, 5.832966)]
    [InlineData(3, 4, 75, 4.986706)]
    [InlineData(3, 5, 105, 7.163936)]
    [InlineData(4, 7, 200, 7.803799)]
    [InlineData(5, 8, 275, 6.878868)]
    [InlineData(6, 9, 360, 6.229882)]
    [InlineData(8, 12, 640, 6.253088)]
    public void Build_FrameWithoutStandOff_HasTabledArea(int frequency, int rows, int facets, double area)
    {
        // Nothing lies below the deck, so the facets are whole; what hangs from the raised chords is skirt and not counted.
        var cover = TrueCover.Build(new CoverSizes(frequency, rows, 1000, 0, 0, 0));

        var plain = cover.Faces.Values.Where(face => !face.IsSkirt).ToArray();
        Assert.Equal(facets, plain.Length);
        Assert.Equal(area, plain.Sum(face => face.Area) / 1e6, 1e-6);
    }

    /// <summary>Lengths of struts moved out by 25 mm at R = 3657.6 mm: own calculation of the check tables, part 4.</summary>
    [Theory]
    [InlineData(2, 3, 2013.5043, 2276.9507)]
    [InlineData(3, 5, 1284.3726, 1518.8800)]
    public void Build_StandOff_MovesHubsAsTabled(int frequency, int rows, double shortest, double longest)
    {
        var cover = TrueCover.Build(new CoverSizes(frequency, rows, 3657.6, 25, 1000, 0));

        // Base hubs have fewer facets and move otherwise: facets well above them are looked at.
        var lengths = cover.Faces.Values.Where(face => !face.IsSkirt && face.Corners.Min(corner => corner.Z) > 1000)
            .SelectMany(face => face.Corners.Select((corner, i) => corner.DistanceTo(face.Corners[(i + 1) % face.Corners.Count]))).ToArray();
        Assert.Equal(shortest, lengths.Min(), 1e-4);
        Assert.Equal(longest, lengths.Max(), 1e-4);
    }

    [Fact]
    public void Build_ThreeVSkirtAtNothing_IsTheTabledStrip()
    {
        // Check tables, part 8: ten right triangles 1507.307 x 58.350 and five rectangles 1476.018 x 58.350.
        var cover = TrueCover.Build(new CoverSizes(3, 5, 3657.6, 0, 0, 0));

        var skirt = cover.Faces.Values.Where(face => face.IsSkirt).ToArray();
        Assert.Equal(10, skirt.Count(face => face.Corners.Count == 3));
        Assert.Equal(5, skirt.Count(face => face.Corners.Count == 4));
        Assert.Equal(0.87039e6, skirt.Sum(face => face.Area), 10.0);
    }

    [Fact]
    public void Build_ThreeVWithSkirt_HasTheTabledHem()
    {
        // Check tables, part 8: hem of the 24 ft 3V 5/8 at 25 mm stand-off without ease.
        var hems = Hems(new CoverSizes(3, 5, 3657.6, 25, 60, 0));

        Assert.Equal(15, hems.Length);
        Assert.Equal(22611.11, hems.Sum(), 0.01);
    }

    [Theory]
    [InlineData(0)]
    [InlineData(25)]
    public void Build_ThreeVOnTheDeck_LosesFiveTips(double standOff)
    {
        // Check tables, part 8b: the low hubs stand at -4.83 mm at 25 mm; there five hanging facets lose a tip 5.4 mm wide.
        var hems = Hems(new CoverSizes(3, 5, 3657.6, standOff, 0, 0));

        Assert.Equal(standOff == 0 ? 0 : 5, hems.Count(length => Math.Abs(length - 5.4) < 0.05));
    }

    private static double[] Hems(CoverSizes sizes) =>
    [
        .. from face in TrueCover.Build(sizes).Faces.Values
           from i in Enumerable.Range(0, face.Corners.Count)
           where face.Edges[i].Role == "hem"
           select face.Corners[i].DistanceTo(face.Corners[(i + 1) % face.Corners.Count]),
    ];
}
