using CoverPattern.Geometry;

namespace CoverPattern.Files.Reports;

/// <summary>From where a dome is looked at.</summary>
/// <param name="Name">What the view is called.</param>
/// <param name="Right">Direction that points right on paper, length 1.</param>
/// <param name="Up">Direction that points up on paper, length 1.</param>
/// <param name="Toward">Direction that points at the person who looks, length 1.</param>
internal sealed record DomeDirection(string Name, Point3 Right, Point3 Up, Point3 Toward)
{
    public static DomeDirection Plan { get; } =
        new("Plan, seen from outside and above; the front (+x) is on the right", new Point3(1, 0, 0), new Point3(0, 1, 0), new Point3(0, 0, 1));

    public static DomeDirection Front { get; } =
        new("Front elevation, seen from outside, from +x; +y is on the right", new Point3(0, 1, 0), new Point3(0, 0, 1), new Point3(1, 0, 0));

    public static DomeDirection Side { get; } =
        new("Side elevation, seen from outside, from +y; the front (+x) is on the left", new Point3(-1, 0, 0), new Point3(0, 0, 1), new Point3(0, 1, 0));

    public bool IsPlan => Toward.Z > 0.5;

    public Point2 Project(Point3 point) => new(Point3.Dot(point, Right), Point3.Dot(point, Up));
}
