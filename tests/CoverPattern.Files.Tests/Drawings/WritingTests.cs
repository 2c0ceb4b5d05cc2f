using CoverPattern.Files.Drawings;

namespace CoverPattern.Files.Tests.Drawings;

public sealed class WritingTests
{
    [Fact]
    public void Draw_PatternsOfAnyJob_WritingIsInsideItsPieceAndOffEveryMarkAndText()
    {
        var drawn = 0;
        AnyResults.Jobs.Sample(
            text =>
            {
                if (AnyResults.Make(text, isLaid: false) is not { } result)
                {
                    return;
                }

                drawn++;
                WritingRules.None(WritingRules.Complaints(PatternSheet.Draw(result.Pieces)));
            },
            iter: 40,
            threads: 1);

        Assert.True(drawn > 20, $"{drawn} of 40 were drawn");
    }

    [Fact]
    [Trait("Category", "Long")]
    public void Draw_LaysOfAnyJob_WritingIsInsideItsPieceAndOffEveryMarkAndText()
    {
        var drawn = 0;
        AnyResults.Jobs.Sample(
            text =>
            {
                var result = AnyResults.Make(text, isLaid: true);
                foreach (var lay in result?.Lays ?? [])
                {
                    drawn++;
                    WritingRules.None(WritingRules.Complaints(LayDrawing.Draw(lay, result!.Pieces)));
                }
            },
            iter: 12,
            threads: 1);

        Assert.True(drawn > 6, $"{drawn} lays of 12 jobs were drawn");
    }

    [Theory]
    [InlineData(0, 0, "is not wholly inside")]
    [InlineData(0, 40, "over GRAIN")]
    [InlineData(0, 80, "over T01")]
    public void Complaints_TextPutWrong_IsFound(double x, double y, string expected)
    {
        // A square of 200 mm with a grain line at 40 and a name at 80.
        var block = new DrawnBlock("T01", [
            new DrawnLine(DrawingLayers.Cut, [new(-100, 0), new(100, 0), new(100, 200), new(-100, 200)], IsClosed: true),
            new DrawnLine(DrawingLayers.Grain, [new(-50, 40), new(50, 40)], IsClosed: false)]);
        DrawnText Text(double atX, double atY) => new(DrawingLayers.Label, "T01", new(atX, atY), 8, 0, TextAnchor.Middle);
        var drawing = new Drawing("any", [block], [new BlockInsertion("T01", default, 0, IsMirrored: false)], [], [Text(x, y), Text(0, 80)]);

        Assert.Contains(WritingRules.Complaints(drawing), complaint => complaint.Contains(expected, System.StringComparison.Ordinal));
        Assert.Empty(WritingRules.Complaints(drawing with { Texts = [Text(0, 80), Text(0, 120)] }));
    }
}
