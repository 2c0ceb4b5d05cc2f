namespace CoverPattern.Workshop.Tests.Sewing;

/// <summary>How some seams are made.</summary>
/// <param name="Where">"all", "rows" or "uprights".</param>
/// <param name="Name">The job's name for it.</param>
/// <param name="Form">"plain", "lapped", "felled", "folder-felled", "welded", "split-welded", "bound" or "zip".</param>
/// <param name="Width">Plain, bound: the allowance; zip: the cloth turned back; else the finished width, millimetres.</param>
internal sealed record OrderedMakeUp(string Where, string Name, string Form, double Width)
{
    /// <summary>Cloth beyond the sew line, by the table of the seams' page.</summary>
    internal double AllowanceOf(string side) => (Form, side) switch
    {
        ("plain" or "bound" or "zip", _) => Width,
        ("lapped" or "split-welded", _) => Width / 2,
        ("folder-felled", _) => 1.5 * Width,
        ("felled", "under") => 2 * Width,
        ("felled", "over") => Width,
        ("welded", "under") => Width,
        ("welded", "over") => 0,
        _ => double.NaN,
    };
}
