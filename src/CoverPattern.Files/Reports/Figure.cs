using System.Collections.Immutable;
using CoverPattern.Geometry;

namespace CoverPattern.Files.Reports;

/// <summary>A drawing of the report in millimetres on paper, y up.</summary>
/// <param name="Name">What it shows, for people and for readers of the screen.</param>
/// <param name="Window">What is seen of it.</param>
/// <param name="Lines">In order of painting.</param>
/// <param name="Texts">Painted over all lines.</param>
internal sealed record Figure(string Name, Box2 Window, ImmutableArray<FigureLine> Lines, ImmutableArray<FigureText> Texts);
