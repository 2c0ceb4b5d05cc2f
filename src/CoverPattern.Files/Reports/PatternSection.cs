using System;
using System.Collections.Generic;
using System.Collections.Immutable;
using System.Linq;
using CoverPattern.Files.Drawings;
using CoverPattern.Files.Results;
using CoverPattern.Patterns.Pieces;
namespace CoverPattern.Files.Reports;

/// <summary>Every pattern: drawing, edges, setting out by tape, pieces.</summary>
internal static class PatternSection
{
    // From here on patterns stand two abreast and smaller: own choice, for a report that can still be carried.
    private const int Many = 40;

    // A pattern of more edges than this stands across the page, its tables below it: own choice.
    private const int MostEdgesBeside = 5;

    public static void Write(PageWriter page, Result result)
    {
        var set = result.Pieces;
        var isMany = set.Patterns.Length > Many;
        var facts = new PatternFacts(set, new SideLengths(set, Ruler.Of(result.Job)));
        page.Line("h2", "Patterns");
        page.Line("p", Guide(facts.Lengths.Ruler));
        page.Open("div", ("class", isMany ? "patterns compact" : "patterns"));
        foreach (var pattern in set.Patterns)
        {
            var isBroad = !isMany && pattern.AllRuns.Length > MostEdgesBeside;
            var room = isMany ? PatternFigure.SmallRoom : isBroad ? PatternFigure.BroadRoom : PatternFigure.Room;
            var scale = PatternFigure.Scale(pattern, room);
            page.Open("section", ("class", isBroad ? "pattern broad" : "pattern"), ("id", "pattern-" + pattern.Id));
            page.Open("div", ("class", "drawing"));
            FigureSvg.Write(page, PatternFigure.Draw(pattern, facts.Sides(pattern), scale, facts.Lengths.Ruler));
            page.Line("p", FormattableString.Invariant($"Seen from outside. Scale about 1:{scale:0}."), ("class", "small"));
            page.Close();
            page.Open("div", ("class", "facts"));
            Write(page, pattern, facts);
            page.Close();
            page.Close();
        }

        page.Close();
    }

    private static string Guide(Ruler ruler) => FormattableString.Invariant(
        $"Seen from outside; each pattern at the scale below it when printed on A4. Thick line: cut. Dashes: sew line. Dash and dot: fold over a strut, uncut. Bars across the allowance: notches, drawn longer than they are cut. Arrow: grain, along the roll. Small slanted numbers: corners of the sew line. All lengths in {ruler.Step}, along the sew line, none of them to be added to another; the word such as c07 is the class of the edge: edges joined with each other are of one class and carry the same length. Places of notches are all measured from the corner named. A mirrored piece is the pattern turned over. Where a pattern is one piece of a cover, its edges name the seam and the partner; else see the plan, and the table of pieces and their seams.");

    private static void Write(PageWriter page, Pattern pattern, PatternFacts facts)
    {
        page.Line("h3", $"{pattern.Id}: cut {CutCount.Of(pattern, facts.Set)}");
        page.Line("p", $"{Words.Kind(pattern.Kind)}, {pattern.Cloth}", ("class", "cloth"));
        page.Table("edges", ["Edge", "Is", "Class", "Length", "Allow.", "Notches at"], facts.Edges(pattern));
        if (pattern.AllRuns.Any(run => run.AllowanceMm < 0))
        {
            page.Line("p", "Where the allowance is below 0 the cut line lies inside the sew line, beside the teeth of the zip.");
        }

        Tape(page, pattern, facts);
        foreach (var text in PatternFacts.Marks(pattern))
        {
            page.Line("p", text);
        }

        if (facts.SewnTo(pattern) is { Length: > 0 } sewn)
        {
            page.Line("p", sewn, ("class", "sewn"));
        }

        page.Line("p", facts.Users(pattern), ("class", "users"));
    }

    private static void Tape(PageWriter page, Pattern pattern, PatternFacts facts)
    {
        ImmutableArray<string> steps = [.. TapeSetting.Steps(pattern, facts.Lengths)];
        if (steps.IsEmpty)
        {
            page.Line("p", "An outline with curves is not set out by tape: take it from the drawn files, which are of true size.");
            return;
        }

        page.Line("p", "By tape, on the sew line; allowances go outside it:");
        page.Open("ul");
        foreach (var step in steps)
        {
            page.Line("li", step);
        }

        page.Close();
        IReadOnlyList<string> checks = [.. TapeSetting.Checks(pattern, facts.Lengths)];
        if (checks.Count > 0)
        {
            var name = TapeSetting.Corners(pattern).Length == 4 ? "Diagonals" : "Longest spans";
            page.Line("p", $"{name}, to check: {string.Join(", ", checks)}", ("class", "checks"));
        }
    }
}
