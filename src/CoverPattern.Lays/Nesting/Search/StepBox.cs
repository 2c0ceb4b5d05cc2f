namespace CoverPattern.Lays.Nesting.Search;

/// <summary>An upright rectangle in grid steps.</summary>
internal readonly record struct StepBox(int Left, int Bottom, int Right, int Top)
{
    public int Width => Right - Left;

    public int Height => Top - Bottom;

    public StepBox Moved(int x, int y) => new(Left + x, Bottom + y, Right + x, Top + y);
}
