using System;

namespace CoverPattern.Patterns.Openings;

/// <summary>Air that rises through a low and a high opening because it is warmer inside: an estimate for the shop, never for a customer's paper.</summary>
/// <remarks>
/// Q = Cd A sqrt(2 g H (Ti - To) / Ti), temperatures in kelvin [ASHRAE 1997, eq. 37, as quoted], with both openings one after the other, A = A1 A2 / sqrt(A1^2 + A2^2)
/// (own derivation: their pressures add), and H from the middle of one to that of the other. No wind, air evenly warm, openings sharp-edged and free.
/// </remarks>
public static class StackFlow
{
    /// <summary>Coefficient of a sharp-edged opening; 0.65 to 0.70 are usual [quoted without source].</summary>
    public const double Coefficient = 0.65;

    // Standard gravity, exact by definition, metres a second squared.
    private const double Gravity = 9.80665;
    private const double KelvinAtZeroCelsius = 273.15;

    /// <summary>The one opening that lets through as much as two, one after the other.</summary>
    /// <param name="low">Free area of one, positive.</param>
    /// <param name="high">Free area of the other, in the same unit.</param>
    public static double EffectiveArea(double low, double high) => low * high / Math.Sqrt((low * low) + (high * high));

    /// <summary>The flow, cubic metres a second; 0 where it is not warmer inside or nothing lies between.</summary>
    /// <param name="areas">Free areas low and high, square metres.</param>
    /// <param name="heightM">From the middle of the low ones to that of the high ones, metres.</param>
    /// <param name="celsius">Air inside and outside, degrees Celsius.</param>
    public static double CubicMetresPerSecond((double Low, double High) areas, double heightM, (double Inside, double Outside) celsius)
    {
        var warmer = celsius.Inside - celsius.Outside;
        return warmer <= 0 || heightM <= 0 || areas.Low <= 0 || areas.High <= 0
            ? 0
            : Coefficient * EffectiveArea(areas.Low, areas.High) * Math.Sqrt(2 * Gravity * heightM * warmer / (celsius.Inside + KelvinAtZeroCelsius));
    }
}
