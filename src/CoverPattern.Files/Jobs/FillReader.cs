using System;
using System.Collections.Immutable;
using System.Linq;
using CoverPattern.Files.Results;
using CoverPattern.Patterns.Jobs;

namespace CoverPattern.Files.Jobs;

/// <summary>Reads what closes an opening.</summary>
internal static class FillReader
{
    // A sheet must lie so far inside the outer stitching of its ring, millimetres: as those of round windows.
    private const double StitchRoom = 5;

    private static readonly string[] OfWindows = ["sheet", "ring"];
    private static readonly string[] OfFlaps = ["flap", "opens", "threshold", "webbing", "doubled"];
    private static readonly string[] NotUnderHoods = ["sheet", "ring", "opens", "strip", "drip", "threshold", "webbing", "doubled", "seams"];

    /// <summary>The wish with all that fills its opening.</summary>
    internal static OpeningWish Read(OpeningWish wish, JobSection section, ImmutableArray<Cloth> cloths, JobNotes notes)
    {
        var kind = section.States("kind") ? section.Take<OpeningKind>("kind", Values.Word) : OpeningKind.Window;
        if ((kind == OpeningKind.Slit) != (wish.Outline.Form == OutlineForm.Line) && notes.AreClean(section.PlaceOf("outline"), section.PlaceOf("kind")))
        {
            notes.Refuse(section.PlaceOf("kind"), $"\"{JsonWords.Of(kind)}\" with the outline \"{JsonWords.Of(wish.Outline.Form)}\"", "\"slit\" with the outline \"line\", and no other with it");
        }

        if (kind == OpeningKind.Slit)
        {
            return ReadSlit(wish, section, notes);
        }

        if (kind == OpeningKind.HighVent)
        {
            return ReadHighVent(wish, section, cloths, notes);
        }

        if (section.States("hood"))
        {
            notes.Refuse(section.PlaceOf("hood"), "stated", "of high vents only");
        }

        var hasFlap = kind != OpeningKind.Window;
        foreach (var key in (hasFlap ? OfWindows : OfFlaps).Where(section.States))
        {
            notes.Refuse(section.PlaceOf(key), "stated", hasFlap ? "of windows only: a flap closes this opening" : "of doors and vents only: state \"kind\", or leave it out");
        }

        string? Cloth(string key) => section.States(key) ? WindowReader.Cloth(key, section, cloths, notes) : null;
        wish = wish with
        {
            Kind = kind,
            Sheet = Cloth("sheet"),
            Screen = Cloth("screen"),
            Flap = hasFlap ? Cloth("flap") ?? (cloths.IsEmpty ? null : cloths[0].Name) : null,
            IsSeamed = section.States("seams") && section.Take<string>("seams", Values.Word) == "asCover",
            Doubled = section.States("doubled") ? section.Take<ImmutableArray<string>>("doubled", Values.Labels) : [],
            Threshold = Width("threshold", section, null),
            Held = hasFlap ? section.Take<JoinKind>("held", Values.Word, "zip") : section.States("held") ? section.Take<JoinKind>("held", Values.Word) : JoinKind.Sewn,
            Opens = hasFlap ? section.Take<OpensAt>("opens", Values.Word, kind == OpeningKind.Door ? "around" : "both") : OpensAt.Around,
        };
        wish = wish with
        {
            Ring = wish.Held == JoinKind.Ring ? section.Take<Measure>("ring", Values.Length) : null,
            Lap = Laps(wish) ? section.Take<Measure>("lap", Values.Length, wish.Held == JoinKind.HookLoop ? "40 mm" : null) : default,
            Strip = Width("strip", section, hasFlap && wish.Held == JoinKind.Zip ? "80 mm" : null),
            Drip = Width("drip", section, hasFlap ? "80 mm" : null),
            Webbing = Width("webbing", section, kind == OpeningKind.Door ? "38 mm" : null),
        };
        Check(wish, section, notes);
        return wish;
    }

    private static OpeningWish ReadHighVent(OpeningWish wish, JobSection section, ImmutableArray<Cloth> cloths, JobNotes notes)
    {
        foreach (var key in NotUnderHoods.Where(section.States))
        {
            notes.Refuse(section.PlaceOf(key), "stated", "nothing of the kind: a high vent has a hood, a screen, and a flap inside");
        }

        if (!section.States("screen"))
        {
            notes.Refuse(section.PlaceOf("screen"), "nothing", "required of a high vent: the name of one of the cloths");
        }

        if (wish.Outline.Form == OutlineForm.Facets)
        {
            notes.Refuse(section.PlaceOf("outline"), "\"facets\"", "an outline with a width and a height: a hood is sewn on round its box");
        }

        var held = section.States("held") ? section.Take<JoinKind>("held", Values.Word) : JoinKind.HookLoop;
        if (held != JoinKind.HookLoop)
        {
            notes.Refuse(section.PlaceOf("held"), $"\"{JsonWords.Of(held)}\"", "\"hookLoop\": the flap is closed from inside");
        }

        return wish with
        {
            Kind = OpeningKind.HighVent,
            Screen = section.States("screen") ? WindowReader.Cloth("screen", section, cloths, notes) : null,
            Flap = (section.States("flap") ? WindowReader.Cloth("flap", section, cloths, notes) : null) ?? (cloths.IsEmpty ? null : cloths[0].Name),
            Held = JoinKind.HookLoop,
            Hood = section.Take<Measure>("hood", Values.Length),
            Lap = section.Take<Measure>("lap", Values.Length, "40 mm"),
        };
    }

    private static OpeningWish ReadSlit(OpeningWish wish, JobSection section, JobNotes notes)
    {
        foreach (var key in (string[])[.. OfWindows, .. OfFlaps, "screen", "held", "lap", "drip", "seams", "hood"])
        {
            if (section.States(key))
            {
                notes.Refuse(section.PlaceOf(key), "stated", "nothing fills a slit: it has a zip, and a strip over it");
            }
        }

        return wish with { Kind = OpeningKind.Slit, Held = JoinKind.Zip, Strip = Width("strip", section, "80 mm") };
    }

    /// <summary>Whether any part lies behind the rim or in a pocket.</summary>
    private static bool Laps(OpeningWish wish) => (wish.Sheet ?? wish.Screen ?? wish.Flap) is not null && (wish.Flap is not null || wish.Held != JoinKind.Zip);

    /// <summary>A width, or null for none: not stated without a usual one, or 0.</summary>
    private static Measure? Width(string key, JobSection section, string? usual) =>
        (usual is not null || section.States(key)) && section.Take<Measure>(key, Values.Length, usual) is { Millimetres: > 0 } width ? width : null;

    private static void Check(OpeningWish wish, JobSection section, JobNotes notes)
    {
        var isFilled = (wish.Sheet ?? wish.Screen ?? wish.Flap) is not null;
        if (section.States("lap") && !Laps(wish))
        {
            notes.Refuse(section.PlaceOf("lap"), isFilled ? "a lap beside a zip" : "a lap without a sheet", isFilled ? "no lap: a part held by a zip ends at its teeth" : "a lap where a sheet is sewn in: name the sheet, or leave the lap out");
        }

        if (section.States("held") && !isFilled)
        {
            notes.Refuse(section.PlaceOf("held"), "stated", "a sheet or screen that is held: name it, or leave this out");
        }

        if (section.States("ring") && wish.Kind == OpeningKind.Window && wish.Held != JoinKind.Ring)
        {
            notes.Refuse(section.PlaceOf("ring"), "stated", "with \"held\": \"ring\" only");
        }

        if (!notes.AreClean(section.Place))
        {
            return;
        }

        if (wish.Kind == OpeningKind.Window)
        {
            CheckWindow(wish, section, notes);
        }
        else
        {
            CheckFlap(wish, section, notes);
        }

        if (section.States("strip") && wish.Strip is not null && !wish.HasZips)
        {
            notes.Refuse(section.PlaceOf("strip"), wish.Strip.Value.Typed, "a strip over zips: with \"held\": \"zip\" only");
        }
    }

    private static void CheckWindow(OpeningWish wish, JobSection section, JobNotes notes)
    {
        if (wish is { Sheet: not null, Screen: not null, Held: JoinKind.Sewn })
        {
            notes.Refuse(section.PlaceOf("screen"), $"\"{wish.Screen}\" behind a sheet that is sewn in", "a sheet that comes off: \"held\": \"zip\", \"ring\" or \"hookLoop\"; or the screen alone");
        }

        if (wish.Ring is { } ring && wish.Lap.Millimetres > ring.Millimetres - StitchRoom)
        {
            notes.Refuse(section.PlaceOf("lap"), wish.Lap.Typed, FormattableString.Invariant($"at least {StitchRoom:0} mm less than the ring, {ring.Typed}: the sheet must lie inside the outer stitching"));
        }

        if (wish.Ring is { } width && 2 * wish.TurnUnder.Millimetres > width.Millimetres)
        {
            notes.Refuse(section.PlaceOf("turnUnder"), wish.TurnUnder.Typed, $"at most half the ring, {width.Typed}");
        }
    }

    private static void CheckFlap(OpeningWish wish, JobSection section, JobNotes notes)
    {
        if (wish.Held is JoinKind.Sewn or JoinKind.Ring)
        {
            notes.Refuse(section.PlaceOf("held"), $"\"{JsonWords.Of(wish.Held)}\"", "\"zip\" or \"hookLoop\": a flap must open");
        }

        if (wish is { Held: JoinKind.HookLoop, Opens: OpensAt.Middle })
        {
            notes.Refuse(section.PlaceOf("opens"), "\"middle\" held by hook and loop", "\"held\": \"zip\": two leaves meet edge to edge");
        }

        if (wish.Threshold is not null && wish.Kind != OpeningKind.Door)
        {
            notes.Refuse(section.PlaceOf("threshold"), "stated", "of doors only");
        }

        if (!wish.Doubled.IsEmpty && wish.Kind != OpeningKind.Door)
        {
            notes.Refuse(section.PlaceOf("doubled"), "stated", "of doors only");
        }
    }
}
