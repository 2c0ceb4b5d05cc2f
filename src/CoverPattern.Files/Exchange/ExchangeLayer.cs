using System.Collections.Immutable;

namespace CoverPattern.Files.Exchange;

/// <summary>The numbered layers of a pattern exchange file [ASTM D6673].</summary>
internal static class ExchangeLayer
{
    internal const string Boundary = "1";
    internal const string TurnPoints = "2";
    internal const string CurvePoints = "3";
    internal const string Notch = "4";
    internal const string Grain = "7";
    internal const string Lines = "8";
    internal const string Cutouts = "11";
    internal const string Drills = "13";
    internal const string SewLines = "14";
    internal const string Notes = "15";

    /// <summary>Layers of the other forms of notches.</summary>
    internal static readonly ImmutableArray<string> OtherNotches = ["80", "81", "82", "83"];

    /// <summary>All layers that we write.</summary>
    internal static readonly ImmutableArray<string> Written = [Boundary, TurnPoints, CurvePoints, Notch, Grain, Lines, Cutouts, Drills, SewLines, Notes, .. OtherNotches];
}
