namespace CoverPattern.Patterns.Pieces;

/// <summary>Zip, webbing, tape or binding that goes on an opening of one cover.</summary>
/// <param name="What">"zip", "hook and loop", "edge binding", "jamb webbing", "tie-back", "load tab" or "lifting loop".</param>
/// <param name="Opening">Label of its opening, or "roof".</param>
/// <param name="Label">Its own label, where it has one, such as "O1fz1"; else what it goes on.</param>
/// <param name="LengthMm">Sewn length, nothing added for ends, millimetres; both sides of a zip are equally long.</param>
/// <param name="WidthMm">Width, millimetres; 0 for a zip.</param>
public sealed record Fitting(string What, string Opening, string Label, double LengthMm, double WidthMm)
{
    /// <summary>Whether it is a zip whose halves come apart, with pin and box: what it holds comes off whole.</summary>
    public bool IsSeparating { get; init; }

    /// <summary>What a zip is called.</summary>
    public const string Zip = "zip";

    /// <summary>What hook and loop is called; hook and loop are equally long.</summary>
    public const string HookLoop = "hook and loop";

    /// <summary>What the strip round the edge of sheet or mesh is called.</summary>
    public const string Binding = "edge binding";

    /// <summary>What webbing along jambs and head is called.</summary>
    public const string Webbing = "jamb webbing";

    /// <summary>What the tape that holds a rolled flap is called.</summary>
    public const string TieBack = "tie-back";

    /// <summary>What a strap and buckle is called that pulls roof and wall together and carries the tension, so that no zip does.</summary>
    public const string LoadTab = "load tab";

    /// <summary>What webbing by which the roof is lifted off is called.</summary>
    public const string LiftingLoop = "lifting loop";
}
