using System;
using System.Collections.Generic;
using System.Globalization;

namespace CoverPattern.Workshop.Tests.Sewing;

/// <summary>What was ordered to close one opening; lengths in millimetres.</summary>
/// <param name="Parts">Letter and kind of each layer, the one first that is joined to the cover.</param>
/// <param name="Joins">"zip", "sewn", "hookLoop" or "ring" of the rim's arcs in order from the foot of the right jamb; the last holds for all further ones.</param>
/// <param name="AreaMm2">What the opening takes out.</param>
internal sealed record FillOrder(IReadOnlyList<(string Letter, string Kind)> Parts, IReadOnlyList<string> Joins, double AreaMm2)
{
    /// <summary>Label of the opening.</summary>
    internal string Label { get; init; } = "O1";

    // The shop's usual values, as the job's page tells them.
    internal double TurnUnder { get; init; } = 15;

    internal double Lap { get; init; } = 20;

    internal double Chain { get; init; } = 10;

    internal bool HasLeaves { get; init; }

    internal bool IsRing => Joins[0] == "ring";

    /// <summary>How far the area of chords may lie from the outline's.</summary>
    internal double AreaError { get; init; }

    /// <summary>Zips as the shop's list tells them; null where it is not held to the pieces.</summary>
    internal IReadOnlyList<(string Part, double LengthMm)>? Zips { get; init; }

    /// <summary>Whether an arc or piece is named for the opening.</summary>
    internal bool Owns(string label) => OpeningOrder.IsNamedFor(label, Label);

    internal string JoinOf(string arc) => Joins[Math.Min(NumberOf(arc), Joins.Count) - 1];

    /// <summary>How many arcs of its rim there are up to this one.</summary>
    internal static int NumberOf(string arc) => arc.Contains('-', StringComparison.Ordinal) ? int.Parse(arc.Split('-')[1], CultureInfo.InvariantCulture) : 1;

    /// <summary>Cloth of a part beyond the rim, by the table of the page on doors.</summary>
    internal double Beyond(string kind, string join) => (kind, join) switch
    {
        ("flap", "zip") => TurnUnder,
        ("flap", "hookLoop") => Lap + TurnUnder,
        (_, "zip") => -Chain / 2,
        _ => Lap,
    };
}
