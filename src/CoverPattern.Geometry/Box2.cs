namespace CoverPattern.Geometry;

/// <summary>An upright rectangle.</summary>
/// <param name="Low">Corner of least x and y, millimetres.</param>
/// <param name="High">Corner of greatest x and y, millimetres.</param>
public readonly record struct Box2(Point2 Low, Point2 High)
{
    public double Width => High.X - Low.X;

    public double Height => High.Y - Low.Y;

    public Point2 Centre => Point2.Between(Low, High, 0.5);
}
