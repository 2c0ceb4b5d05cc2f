using System.Linq;
using CoverPattern.Files.Reports;
using CoverPattern.Patterns.Jobs;
using CsCheck;

namespace CoverPattern.Files.Tests.Reports;

public class RulerTests
{
    // By hand: 1508.4 mm is 59.386 in, 59 and 6.17 sixteenths; 15.875 mm is 5/8 in; 0.7 mm is 0.44 sixteenths; 0.8 mm is 0.504.
    [Theory]
    [InlineData(1508.4, "59 3/8")]
    [InlineData(15.875, "5/8")]
    [InlineData(0.7, "0")]
    [InlineData(0.8, "1/16")]
    [InlineData(-26.9875, "-1 1/16")]
    [InlineData(304.8, "12")]
    public void Of_Inches_NearestSixteenth(double millimetres, string expected) =>
        Assert.Equal(expected, new Ruler(IsInches: true).Of(millimetres));

    [Theory]
    [InlineData("24 ft", true)]
    [InlineData("12' 6\"", true)]
    [InlineData("150 1/2 in", true)]
    [InlineData("5 m", false)]
    [InlineData("3200 mm", false)]
    [InlineData("3200", false)]
    public void Of_Job_FollowsTheTypedSize(string typed, bool isInches)
    {
        var job = ReportResults.Dome(2, 3);

        var ruler = Ruler.Of(job with { Frame = job.Frame with { Size = new Measure(5000, typed) } });

        Assert.Equal(isInches, ruler.IsInches);
    }

    [Fact]
    public void EnoughWithUnit_AnyLength_NeverLessThanIt()
    {
        Gen.Double[0, 1e5].Sample(millimetres =>
        {
            var words = new Ruler(IsInches: true).EnoughWithUnit(millimetres).Split(' ');
            var inches = words[..^1].Sum(Value);
            Assert.InRange(inches * 25.4, millimetres - 1e-6, millimetres + (25.4 / 16) + 1e-6);
        });

        static double Value(string word) => word.Split('/') is [var over, var under]
            ? double.Parse(over, System.Globalization.CultureInfo.InvariantCulture) / double.Parse(under, System.Globalization.CultureInfo.InvariantCulture)
            : double.Parse(word, System.Globalization.CultureInfo.InvariantCulture);
    }
}
