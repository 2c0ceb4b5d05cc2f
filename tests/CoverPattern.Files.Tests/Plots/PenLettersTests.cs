using System.Linq;
using CoverPattern.Files.Drawings;
using CoverPattern.Files.Plots;
using CoverPattern.Geometry;

namespace CoverPattern.Files.Tests.Plots;

public class PenLettersTests
{
    private const string Printed = "ABCDEFGHIJKLMNOPQRSTUVWXYZabcdefghijklmnopqrstuvwxyz0123456789.,:;-+=/\\()[]'\"_#%*!?<>&\u00d7\u00b0";

    [Fact]
    public void Write_EveryLetter_HasAShapeOfItsOwnWithinItsBox()
    {
        var shapes = Printed.Select(letter => PenLetters.Write(letter.ToString(), 6).ToArray()).ToArray();

        // Four wide, six high above the base line, two below: the grid on which they are drawn.
        Assert.All(shapes.SelectMany(shape => shape).SelectMany(line => line), point =>
            Assert.True(point is { X: >= 0 and <= 4, Y: >= -2 and <= 6 }, point.ToString()));
        Assert.Equal(Printed.Length, shapes.Select(shape => string.Join(";", shape.Select(line => string.Join(" ", line)))).Distinct().Count());
        Assert.All(shapes, shape => Assert.All(shape, line => Assert.True(line.Length >= 2)));
    }

    [Fact]
    public void Write_Text_IsAsWideAsSaidAndNoWiderThanItsRoom()
    {
        const string text = "C03 P1.07";

        var box = Rings.Bounds(PenLetters.Write(text, 12).SelectMany(line => line));

        Assert.Equal(PenLetters.Width(text, 12), box.High.X, 9);
        Assert.Equal(12, box.High.Y, 9);
        Assert.True(PenLetters.Width(text, 12) <= LetterWidth.Estimate(text, 12) * 1.1);
    }

    [Theory]
    [InlineData("größer", "groser")]
    [InlineData("a\u202Eb\u0007", "ab")]
    public void Write_AccentsAndControls_AreDrawnPlainOrNotAtAll(string text, string plain) =>
        Assert.Equal(plain.Length, PenLetters.Width(text, 6) is var width ? (int)((width + 2) / 6) : 0);

    [Fact]
    public void Write_UnknownLetter_IsABox() =>
        Assert.Equal(5, Assert.Single(PenLetters.Write("\u7a93", 6)).Length);
}
