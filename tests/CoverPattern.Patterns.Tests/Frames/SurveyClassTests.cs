using System;
using System.Linq;
using CoverPattern.Geometry;
using CoverPattern.Patterns.Frames;
using CoverPattern.Patterns.Jobs;

namespace CoverPattern.Patterns.Tests.Frames;

public class SurveyClassTests
{
    [Theory]
    [InlineData(0, 0, 3)]
    [InlineData(0.4, 2, 3)]
    [InlineData(0.4, 0, 165)]
    public void Build_MeasuredDome_GroupsStrutsWithinTheToleranceOnly(double noise, double tolerance, int classes)
    {
        // A 24 ft 3V 5/8 measured with a slip of 0.4 mm at most an axis: a strut's ends move it by 1.4 mm at most, so classes 32 mm
        // and more apart (own calculation) stay three when 2 mm wide, nearly always; with 0 mm every strut is a class of its own.
        var nominal = FrameBuilder.Build(new FrameWish(FrameFamily.Icosahedron, 3, 5, "5/8", FrameMeasure.Radius, new Measure(3657.6, "")));
        var random = new Random(5);
        double Slip() => noise * ((2 * random.NextDouble()) - 1) / 2;
        var survey = new FrameSurvey(
            "",
            [.. nominal.Hubs.Select(hub => new SurveyHub(hub.Label, hub.Position + new Point3(Slip(), Slip(), Slip()), hub.Label))],
            [.. nominal.Facets.Select(facet => new SurveyFacet(facet.Hubs, facet.Label))],
            [])
        { WeldMm = 0.1, ClassesMm = tolerance };

        var frame = FrameBuilder.Build(new FrameWish(default, 0, 0, "", default, default) { Survey = survey });

        Assert.Equal(classes, frame.Classes.Length);
        Assert.Equal(165, frame.Classes.Sum(own => own.Count));
        Assert.All(frame.Struts, strut => Assert.Equal(Point3.Distance(frame.Hubs[strut.From].Position, frame.Hubs[strut.To].Position), strut.LengthMm, 1e-9));
        Assert.All(frame.Classes, own =>
        {
            var lengths = frame.Struts.Where(strut => strut.Class == own.Label).Select(strut => strut.LengthMm).ToArray();
            Assert.Equal((lengths.Min(), lengths.Max()), (own.ShortestMm, own.LongestMm), (a, b) => Math.Abs(a.Item1 - b.Item1) < 1e-5 && Math.Abs(a.Item2 - b.Item2) < 1e-5);
            Assert.InRange(own.LongestMm - own.ShortestMm, 0, Math.Max(tolerance, 1e-5));
        });
    }
}
