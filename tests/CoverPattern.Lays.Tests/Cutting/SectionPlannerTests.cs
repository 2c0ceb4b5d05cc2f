using System;
using System.Collections.Immutable;
using System.Linq;
using CoverPattern.Geometry;
using CoverPattern.Lays.Cutting;
using CsCheck;

namespace CoverPattern.Lays.Tests.Cutting;

public class SectionPlannerTests
{
    [Theory]
    [InlineData(1500)]
    [InlineData(3000)]
    [InlineData(100_000)]
    public void Split_Dome_CoversTheLayInSectionsThatTheMachineHolds(double longest)
    {
        var (lay, pieces) = LaidDome.Make(3, 5, 2500);

        var sections = SectionPlanner.Split(lay, pieces, longest);

        Assert.Equal(0, sections[0].FromMm);
        Assert.Equal(lay.LengthMm, sections[^1].ToMm);
        Assert.All(sections.Zip(sections.Skip(1)), pair => Assert.Equal(pair.First.ToMm, pair.Second.FromMm));
        Assert.All(sections, section => Assert.True(section.ToMm - section.FromMm <= longest));
        // No fewer sections can hold the length.
        Assert.Equal((int)Math.Ceiling(lay.LengthMm / longest), sections.Length, 1.0);
        var named = sections.SelectMany(section => section.Whole).ToArray();
        var parted = sections.SelectMany(section => section.Parted).Distinct(StringComparer.Ordinal).ToArray();
        Assert.Equal(lay.Placements.Select(place => place.Piece).Order(StringComparer.Ordinal), named.Concat(parted).Order(StringComparer.Ordinal));
    }

    [Fact]
    public void Split_PiecesInColumns_PartsNone()
    {
        // Ten columns of boxes 400 mm long: a machine of 900 mm ends each section between two columns.
        var (lay, pieces) = LaidDome.Columns(10, 400);

        var sections = SectionPlanner.Split(lay, pieces, 900);

        Assert.All(sections, section => Assert.Empty(section.Parted));
    }

    [Fact]
    public void Within_AnySections_KeepEveryStrokesLengthAndPlace() => Gen.Double[300, 4000].Sample(
        longest =>
        {
            var (lay, pieces) = LaidDome.Columns(7, 377);
            var plan = CutPlanner.Plan(lay, pieces, []);
            var parts = SectionPlanner.Split(lay, pieces, longest)
                .SelectMany(section => SectionPlanner.Within(section, plan.Strokes).Select(stroke => (section, stroke))).ToArray();

            var back = parts.Sum(part => part.stroke.Length);
            // A stroke along a section's end is in both.
            Assert.True(back >= plan.Strokes.Sum(stroke => stroke.Length) - 1e-6);
            return parts.All(part => part.stroke.Points.All(point => point.X >= -1e-9 && point.X <= part.section.ToMm - part.section.FromMm + 1e-9));
        },
        iter: 50);

    [Fact]
    public void Within_StrokeThatLeavesTwice_IsBroken()
    {
        var stroke = new Stroke("P1", StrokeUse.Draw, "line", [new(0, 0), new(100, 0), new(100, 50), new(0, 50)]);
        var section = new Section(1, 20, 60, ImmutableArray<string>.Empty, ["P1"]);

        var parts = SectionPlanner.Within(section, [stroke]);

        // By hand: 40 mm of each of the two long legs.
        Assert.Equal(2, parts.Length);
        Assert.Equal<Point2>([new Point2(0, 0), new Point2(40, 0)], Grid.Snap(parts[0].Points));
        Assert.Equal<Point2>([new Point2(40, 50), new Point2(0, 50)], Grid.Snap(parts[1].Points));
    }
}
