using System;
using System.Globalization;
using System.Linq;
using CoverPattern.Patterns.Jobs;

namespace CoverPattern.Files.Reports;

/// <summary>How lengths are printed: in whole millimetres, or in sixteenths of an inch for a shop that measures in inches.</summary>
/// <param name="IsInches">Whether the shop measures in inches.</param>
internal sealed record Ruler(bool IsInches)
{
    // Exact by definition: international yard and pound agreement, 1959.
    private const double MillimetresPerInch = 25.4;
    private const double InchesPerFoot = 12;
    private const long Sixteenths = 16;
    private static readonly string[] InchUnits = ["in", "ft", "'", "\""];

    /// <summary>What stands behind the numbers.</summary>
    public string Unit => IsInches ? "in" : "mm";

    /// <summary>The unit and its step, such as "mm, to the nearest 1 mm".</summary>
    public string Step => IsInches ? "in, to the nearest 1/16 in" : "mm, to the nearest 1 mm";

    /// <summary>The smallest step that is printed, millimetres.</summary>
    public double StepMm => IsInches ? MillimetresPerInch / Sixteenths : 1;

    /// <summary>The ruler of the person who typed the frame's size; where none was typed, its struts or eaves, else the roll.</summary>
    public static Ruler Of(Job job)
    {
        var frame = job.Frame;
        var typed = frame.Size.Typed is { Length: > 0 } size ? size
            : frame.Struts is { Lengths.Length: > 0 } struts ? struts.Lengths[0].Length.Typed
            : frame.Gores is { Radius.Typed.Length: > 0 } gores ? gores.Radius.Typed
            : job.Cloths[0].RollWidth.Typed;
        return new Ruler(InchUnits.Any(unit => typed.Contains(unit, StringComparison.Ordinal)));
    }

    /// <summary>A length without its unit: "1508", or "59 3/8"; halves away from zero.</summary>
    public string Of(double millimetres)
    {
        if (!IsInches)
        {
            return Printed.Mm(millimetres);
        }

        var steps = (long)Math.Round(millimetres / MillimetresPerInch * Sixteenths, MidpointRounding.AwayFromZero);
        var (whole, rest) = Math.DivRem(Math.Abs(steps), Sixteenths);
        var sign = steps < 0 ? "-" : string.Empty;
        var (over, under) = (rest, Sixteenths);
        while (over > 0 && over % 2 == 0)
        {
            (over, under) = (over / 2, under / 2);
        }

        var number = whole.ToString(CultureInfo.InvariantCulture);
        var fraction = FormattableString.Invariant($"{over}/{under}");
        return (rest, whole) switch
        {
            (0, _) => sign + number,
            (_, 0) => sign + fraction,
            _ => sign + number + " " + fraction,
        };
    }

    /// <summary>A length with its unit, rounded up to the next step: of cloth to be cut off a roll.</summary>
    public string EnoughWithUnit(double millimetres) => IsInches
        ? WithUnit(Math.Ceiling(millimetres / MillimetresPerInch * Sixteenths) / Sixteenths * MillimetresPerInch)
        : WithUnit(Math.Ceiling(millimetres));

    /// <summary>What stands behind long lengths: of seams, hems, cloth.</summary>
    public string LongUnit => IsInches ? "ft" : "m";

    /// <summary>A long length without its unit: metres with centimetres, or feet with tenths.</summary>
    public string Long(double millimetres) => IsInches
        ? Printed.Number(millimetres / (InchesPerFoot * MillimetresPerInch), 1)
        : Printed.Metres(millimetres);

    /// <summary>A length with its unit.</summary>
    public string WithUnit(double millimetres) => Of(millimetres) + " " + Unit;

    /// <summary>An allowance without its unit: in millimetres to a tenth, since a width of 12.5 mm is one that a shop sets.</summary>
    public string Allowance(double millimetres) => IsInches ? Of(millimetres) : Printed.Number(millimetres, 1);
}
