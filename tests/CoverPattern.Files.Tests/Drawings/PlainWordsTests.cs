using System;
using System.Text;
using CoverPattern.Files.Drawings;
using CoverPattern.Files.Dxf;
using CoverPattern.Files.Svg;
using CsCheck;

namespace CoverPattern.Files.Tests.Drawings;

public class PlainWordsTests
{
    [Theory]
    [InlineData("a\u202eb", "a\ufffdb")]
    [InlineData("\u2066x\u2069", "\ufffdx\ufffd")]
    [InlineData("a\tb\r\nc\u2028d", "a b  c d")]
    [InlineData("\u0000\u001b[31m", "\ufffd\ufffd[31m")]
    [InlineData("می\u200cخواهم", "می\u200cخواهم")]
    [InlineData("Tür 1 \"süd\" 窓 😀", "Tür 1 \"süd\" 窓 😀")]
    public void Of_Text_KeepsLettersAndReplacesSignsThatAct(string text, string expected) =>
        Assert.Equal(expected, PlainWords.Of(text));

    [Fact]
    public void Of_AnyText_IsStableAndFreeOfControlSigns()
    {
        Gen.Char.Array[0, 40].Select(letters => new string(letters)).Sample(text =>
        {
            var plain = PlainWords.Of(text);

            Assert.Equal(plain, PlainWords.Of(plain));
            Assert.DoesNotContain(plain, letter => char.IsControl(letter) || letter is (>= '\u202a' and <= '\u202e') or (>= '\u2066' and <= '\u2069'));
        });
    }

    [Fact]
    public void Write_DrawingWithTurnedText_NoFileHoldsTheSign()
    {
        var drawing = new Drawing(
            "t\u202eitle", [], [], [], [new DrawnText(DrawingLayers.Label, "P1\u202e02", default, 5, 0, TextAnchor.Start)]);

        var (svg, dxf) = (Encoding.UTF8.GetString(SvgWriter.Write(drawing)), Encoding.ASCII.GetString(DxfWriter.Write(drawing)));

        Assert.DoesNotContain("\u202e", svg, StringComparison.Ordinal);
        Assert.Contains("P1\ufffd02", svg, StringComparison.Ordinal);
        Assert.DoesNotContain("202E", dxf, StringComparison.Ordinal);
        Assert.Contains("P1\\U+FFFD02", dxf, StringComparison.Ordinal);
    }
}
