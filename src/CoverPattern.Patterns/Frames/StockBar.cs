using System.Collections.Immutable;

namespace CoverPattern.Patterns.Frames;

/// <summary>A bar of stock and what is cut from it.</summary>
/// <param name="Classes">Classes of the struts, the longest first.</param>
/// <param name="RestMm">What is left, millimetres.</param>
public sealed record StockBar(ImmutableArray<string> Classes, double RestMm);
