using CoverPattern.Patterns.Openings;

namespace CoverPattern.Patterns.Tests.Openings;

public class StackFlowTests
{
    private const double SquareMetresPerSquareFoot = 0.09290304;
    private const double CubicFeetPerMinute = 1 / (0.3048 * 0.3048 * 0.3048) * 60;

    [Fact]
    public void Flow_TenSquareFeetTenFeetApart_NearTheCustomaryRule()
    {
        // Own calculation: 952 cfm; the customary Q = 9.4 A sqrt(h dT) in feet and Fahrenheit is 940. 80 F are 26.667 C, 70 F 21.111 C.
        var area = 10 * SquareMetresPerSquareFoot;
        var flow = StackFlow.CubicMetresPerSecond((area, area), 10 * 0.3048, (26.6667, 21.1111)) * CubicFeetPerMinute;

        Assert.Equal(952, flow, 1.0);
        Assert.Equal(940, 9.4 * 10 * System.Math.Sqrt(10 * 10), 1e-9);
    }

    // Own derivation: r sqrt(2) / sqrt(1 + r^2).
    [Theory]
    [InlineData(1.5, 1.177)]
    [InlineData(2, 1.265)]
    [InlineData(3, 1.342)]
    [InlineData(4, 1.372)]
    public void Flow_LargerOutlet_GainsAsTheSeriesSays(double ratio, double gain) =>
        Assert.Equal(gain, StackFlow.CubicMetresPerSecond((1, ratio), 3, (30, 20)) / StackFlow.CubicMetresPerSecond((1, 1), 3, (30, 20)), 0.0005);

    [Fact]
    public void Flow_HalfASquareMetreEach_IsAsCalculatedApart() =>
        // Own calculation: 305 K and 298 K, 3.5 m, 0.288 m3/s.
        Assert.Equal(0.288, StackFlow.CubicMetresPerSecond((0.5, 0.5), 3.5, (31.85, 24.85)), 0.0005);

    [Theory]
    [InlineData(20, 20, 1)]
    [InlineData(10, 20, 1)]
    [InlineData(30, 20, 0)]
    public void Flow_NotWarmerOrNotHigher_IsNone(double inside, double outside, double height) =>
        Assert.Equal(0, StackFlow.CubicMetresPerSecond((1, 1), height, (inside, outside)));
}
