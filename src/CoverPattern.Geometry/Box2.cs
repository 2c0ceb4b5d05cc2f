namespace CoverPattern.Geometry;

/// <summary>An upright rectangle.</summary>
/// <param name="Low">Corner of least x and y, millimetres.</param>
/// <param name="High">Corner of greatest x and y, millimetres.</param>
public readonly record struct Box2(Point2 Low, Point2 High)
{
    public double Width => High.X - Low.X;

    public double Height => High.Y - Low.Y;

    public Point2 Centre => Point2.Between(Low, High, 0.5);

    /// <summary>Whether two boxes have no inner point in common; touching ones are apart.</summary>
    /// <param name="other">The other box.</param>
    public bool IsApartFrom(Box2 other) => High.X <= other.Low.X || other.High.X <= Low.X || High.Y <= other.Low.Y || other.High.Y <= Low.Y;
}
