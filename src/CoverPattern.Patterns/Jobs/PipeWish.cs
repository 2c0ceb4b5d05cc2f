namespace CoverPattern.Patterns.Jobs;

/// <summary>A stove pipe through the cover, with what is sewn round it.</summary>
/// <param name="Place">Where it goes through.</param>
/// <param name="Diameter">Outer diameter of the pipe.</param>
/// <param name="Clear">Clear distance from the pipe's wall to all that can burn, from the papers of stove and pipe.</param>
/// <param name="Cloth">Name of the heat cloth of patch, sleeve and flaps, among the cloths; it states a service temperature.</param>
public sealed record PipeWish(PipePlace Place, Measure Diameter, Measure Clear, string Cloth)
{
    /// <summary>Half the angle of a cone boot at its apex, degrees; null for a straight sleeve.</summary>
    public double? Spread { get; init; }

    /// <summary>Room between pipe and sleeve.</summary>
    public Measure Gap { get; init; }

    /// <summary>Height of the sleeve's top over the highest point of its foot, along the pipe.</summary>
    public Measure Sleeve { get; init; }

    /// <summary>Cloth turned under at the cover's rim, at the patch's hole, at the sleeve's foot and top, and round the flaps.</summary>
    public Measure TurnUnder { get; init; }

    /// <summary>How far the patch lies over the cover beyond the rim.</summary>
    public Measure Lap { get; init; }

    /// <summary>How far the rain flap hangs over the patch, seen along the pipe.</summary>
    public Measure RainFlap { get; init; }

    /// <summary>How far the closing flap reaches beyond the hole, seen along the pipe.</summary>
    public Measure ClosingFlap { get; init; }

    /// <summary>Radius of the sleeve, and of the top of a cone boot, millimetres.</summary>
    public double SleeveRadius => (Diameter.Millimetres / 2) + Gap.Millimetres;

    /// <summary>Radius within which nothing but heat cloth may be, about the pipe's middle line, millimetres.</summary>
    public double ClearRadius => (Diameter.Millimetres / 2) + Clear.Millimetres;
}
