using System.Linq;
using CoverPattern.Patterns.Frames;
using CoverPattern.Patterns.Shells;

namespace CoverPattern.Patterns.Tests.Shells;

public class MeasuredRaiseTests
{
    [Theory]
    [InlineData(45, false)]
    [InlineData(49, true)]
    public void Of_RaiseOfHighHubs_IsHeldAgainstTheModel(double measured, bool isFarOff)
    {
        // 3V 5/8: ten of fifteen base hubs stand 0.015969 R above the others (own calculation: 58.4 mm at R = 3657.6).
        var job = Jobs.Dome(3, 5, 2400);
        job = job with { Deck = job.Deck with { Raise = Jobs.Mm(measured) } };

        var heights = MeasuredRaise.Of(job, FrameBuilder.Build(job.Frame));

        Assert.Equal(15, heights.Length);
        var high = heights.Where(height => height.ModelMm > 1).ToArray();
        Assert.Equal(10, high.Length);
        Assert.All(high, height => Assert.Equal(58.4 / 3657.6 * 2400, height.ModelMm, 0.05));
        Assert.All(high, height => Assert.Equal(measured, height.MeasuredMm, 1e-9));
        Assert.All(high, height => Assert.Equal(isFarOff, height.IsFarOff));
        Assert.All(heights.Except(high), height => Assert.Equal(0, height.GapMm, 1e-9));
    }

    [Fact]
    public void Of_NobodyMeasured_IsEmpty()
    {
        var job = Jobs.Dome(3, 5, 2400);

        Assert.Empty(MeasuredRaise.Of(job, FrameBuilder.Build(job.Frame)));
    }
}
