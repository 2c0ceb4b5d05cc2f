using System;
using CoverPattern.Patterns.Jobs;

namespace CoverPattern.Files.Jobs;

/// <summary>Reads how the lower edge is finished.</summary>
internal static class HemReader
{
    internal static HemWish Read(JobSection section, MakeUpForm makeUp, JobNotes notes)
    {
        var kind = section.Take<HemKind>("kind", Values.Word);
        var pipe = section.States("pipe") ? section.Take<Measure>("pipe", Values.Length) : (Measure?)null;
        var depth = section.Take<Measure>("depth", Values.Length, HemDefaults.Depth(kind, makeUp, pipe));
        var turnUnder = section.Take<Measure>("turnUnder", Values.Length, MakeUpDefaults.HemTurnUnder(makeUp, depth));
        var hem = new HemWish(depth, turnUnder)
        {
            Kind = kind,
            Pipe = pipe,
            Gap = kind == HemKind.Sleeve || section.States("gap") ? section.Take<Measure>("gap", Values.Length, HemDefaults.Gap) : null,
            Webbing = kind == HemKind.Webbing || section.States("webbing") ? section.Take<Measure>("webbing", Values.Length, HemDefaults.Webbing) : null,
            Fixings = section.States("fixings") ? Fixings(section.Section("fixings"), kind) : null,
            Fitting = section.States("fitting") ? section.Take<Measure>("fitting", Values.Length) : null,
        };
        if (notes.AreClean(section.Place))
        {
            Check(hem, section, notes);
        }

        return hem;
    }

    private static HemFixings Fixings(JobSection section, HemKind kind) => new(
        section.Take<Measure>("spacing", Values.Length, HemDefaults.Spacing(kind)),
        section.Take<Measure>("height", Values.Length));

    private static void Check(HemWish hem, JobSection section, JobNotes notes)
    {
        if (hem.TurnUnder.Millimetres > hem.Depth.Millimetres)
        {
            notes.Refuse(section.PlaceOf("turnUnder"), hem.TurnUnder.Typed, $"not more than the hem's depth, {hem.Depth.Typed}");
        }

        Belongs("pipe", hem.Pipe, HemKind.Sleeve);
        Belongs("gap", hem.Gap, HemKind.Sleeve);
        Belongs("webbing", hem.Webbing, HemKind.Webbing);
        if (hem.Kind == HemKind.Sleeve)
        {
            CheckSleeve(hem, section, notes);
        }

        if (hem.Webbing is { } webbing && webbing.Millimetres > hem.Depth.Millimetres)
        {
            notes.Refuse(section.PlaceOf("webbing"), webbing.Typed, $"not wider than the hem is deep, {hem.Depth.Typed}");
        }

        void Belongs(string name, Measure? stated, HemKind kind)
        {
            if (stated is { } measure && hem.Kind != kind)
            {
                notes.Refuse(section.PlaceOf(name), measure.Typed, $"with the hem kind \"{kind.ToString().ToLowerInvariant()}\" only; leave it out");
            }
        }
    }

    private static void CheckSleeve(HemWish hem, JobSection section, JobNotes notes)
    {
        if (hem.Pipe is not { } pipe)
        {
            notes.Refuse(section.PlaceOf("pipe"), "nothing", "the diameter of the pipe, rod or rope: a sleeve is made for it");
        }
        else if (hem.Depth.Millimetres < HemDefaults.HalfGirth(pipe))
        {
            notes.Refuse(section.PlaceOf("depth"), hem.Depth.Typed, FormattableString.Invariant($"at least half the girth of the pipe of {pipe.Typed}, {HemDefaults.HalfGirth(pipe):0.0} mm, and some ease"));
        }

        if (hem.Fitting is { } fitting)
        {
            notes.Refuse(section.PlaceOf("fitting"), fitting.Typed, "another kind of hem: a sleeve is cut to its hubs in the shop and cannot be trimmed on the frame");
        }
    }
}
