using System.Collections.Immutable;
using CoverPattern.Geometry;

namespace CoverPattern.Files.Reports;

/// <summary>The part of an opening that lies in one face.</summary>
/// <param name="Name">Name of the opening, such as "O1".</param>
/// <param name="Rim">Label of its rim; of a window another one than its name.</param>
/// <param name="Face">Index of the face.</param>
/// <param name="Ring">Counter-clockwise seen from outside, first point not repeated.</param>
internal sealed record CoverVoid(string Name, string Rim, int Face, ImmutableArray<Point2> Ring);
