using System.Collections.Generic;
using System.Linq;
using CoverPattern.Geometry;
using CoverPattern.Patterns.Pieces;

namespace CoverPattern.Files.Tests.Drawings;

/// <summary>A mark beside the cloth is none: every notch and every drill mark lies on its piece.</summary>
public class MarksOnClothTests
{
    // A notch begins on the cut line, whose corners on curves are rounded apart from it: what a drawn file holds, millimetres.
    private const double OnLine = 0.01;

    [Fact]
    public void Marks_OfPartsWithLapsAndZipsOnATrimmedJob_LieOnTheirPieces()
    {
        var result = AnyResults.Make(
            """
            {
              "schemaVersion": 1, "title": "Marks", "date": "2026-03-01",
              "frame": { "frequency": 2, "cut": "1/2", "size": { "radius": "3.35 m" } },
              "standOff": { "tubeRadius": "17 mm", "hubHeight": "20 mm" },
              "seam": { "makeUp": "plain", "corners": "trimmed" },
              "cloths": [ { "name": "canvas", "rollWidth": "2.4 m" }, { "name": "clear", "rollWidth": "1.4 m" }, { "name": "mesh", "rollWidth": "1.8 m" } ],
              "openings": [
                { "kind": "highVent", "outline": "rectangle", "width": "400 mm", "height": "250 mm", "facet": "F3.02", "screen": "mesh" },
                { "kind": "window", "outline": "circle", "width": "500 mm", "facet": "F2.05", "held": "zip", "sheet": "clear", "screen": "mesh" },
                { "kind": "baseVent", "outline": "rectangle", "width": "700 mm", "height": "600 mm", "above": "100 mm", "towards": 108, "screen": "mesh" }
              ]
            }
            """,
            isLaid: false)!;

        Assert.Equal(["O1f", "O1h", "O1s", "O2p", "O2s"], result.Pieces.Pieces.Select(piece => piece.Label).Where(label => label[..2] is "O1" or "O2").Where(label => !label.EndsWith('c')).Order());
        Assert.Empty(result.Pieces.Patterns.SelectMany(Off));
    }

    private static IEnumerable<string> Off(Pattern pattern)
    {
        var cloth = Rings.ToSteps(pattern.CutLine);
        bool IsOff(Point2 at) => ExactPredicates.Locate(cloth, Grid.ToSteps(at)) < 0
            && Enumerable.Range(0, pattern.CutLine.Length).All(i => Segments.Distance(pattern.CutLine[i], pattern.CutLine[(i + 1) % pattern.CutLine.Length], at) > OnLine);
        return pattern.Notches.Where(notch => IsOff(notch.Outer) || IsOff(notch.Inner)).Select(notch => $"{pattern.Id}: a notch at {notch.AtMm} of run {notch.Run}")
            .Concat(pattern.Drills.Where(drill => IsOff(drill.At)).Select(drill => $"{pattern.Id}: {drill.Purpose} at {drill.At}"))
            .Concat(pattern.Drills.CountBy(drill => (drill.Purpose, drill.At)).Where(count => count.Value > 1).Select(count => $"{pattern.Id}: {count.Key.Purpose} {count.Value} times at one place"));
    }
}
