namespace CoverPattern.Patterns.Jobs;

/// <summary>The bag that a cover is packed in.</summary>
/// <param name="Cloth">Name of its cloth.</param>
/// <param name="Size">Length, width and height; null where the cover's folded volume tells.</param>
/// <param name="Packing">Folded volume over area times thickness.</param>
public sealed record BagWish(string Cloth, (Measure Length, Measure Width, Measure Height)? Size, double Packing);
