namespace CoverPattern.Geometry;

/// <summary>A point of the <see cref="Grid"/>, counted in its steps.</summary>
/// <param name="X">Steps of 2^-10 mm.</param>
/// <param name="Y">Steps of 2^-10 mm.</param>
public readonly record struct GridPoint(long X, long Y)
{
    /// <summary>The point in millimetres; exact.</summary>
    public Point2 ToPoint() => new(X / (double)Grid.StepsPerMillimetre, Y / (double)Grid.StepsPerMillimetre);
}
