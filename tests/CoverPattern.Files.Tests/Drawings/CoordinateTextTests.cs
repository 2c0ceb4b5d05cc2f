using System;
using System.Globalization;
using CoverPattern.Files.Drawings;
using CsCheck;

namespace CoverPattern.Files.Tests.Drawings;

public class CoordinateTextTests
{
    [Theory]
    [InlineData(0.0, "0")]
    [InlineData(-0.000001, "0")]
    [InlineData(100.0, "100")]
    [InlineData(-1200.5, "-1200.5")]
    [InlineData(0.00001, "0.00001")]
    [InlineData(1e-7, "0")]
    [InlineData(131000.123456, "131000.12346")]
    public void Write_FiveDecimals_NoExponentNoTrailingZeros(double value, string expected) =>
        Assert.Equal(expected, CoordinateText.Write(value, decimals: 5));

    [Fact]
    public void Write_AnyGridNumber_ReadsBackAsItself() =>
        Gen.Int[-134_144_000, 134_144_000].Sample(steps =>
            double.Parse(CoordinateText.Write(steps / 1024.0, CoordinateText.GridDecimals), CultureInfo.InvariantCulture) == steps / 1024.0);

    [Theory]
    [InlineData(double.NaN)]
    [InlineData(double.PositiveInfinity)]
    public void Write_NotFinite_Throws(double value) =>
        Assert.Throws<ArgumentOutOfRangeException>(() => CoordinateText.Write(value, decimals: 5));
}
