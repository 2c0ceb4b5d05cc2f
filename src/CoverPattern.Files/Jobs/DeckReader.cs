using System;
using System.Collections.Generic;
using System.Collections.Immutable;
using CoverPattern.Patterns.Frames;
using CoverPattern.Patterns.Jobs;
using CoverPattern.Patterns.Shells;

namespace CoverPattern.Files.Jobs;

/// <summary>Reads where deck and ground lie under the base hubs.</summary>
internal static class DeckReader
{
    internal static DeckWish Read(JobSection section, JobNotes notes) => new(section.Take<DeckDatum>("datum", Values.Word))
    {
        Plinth = Optional(section, "plinth"),
        Heights = Heights(section, "heights", notes),
        Raise = Optional(section, "raise"),
        Ground = Heights(section, "ground", notes),
        Tilt = Tilt(section, notes),
    };

    /// <summary>Holds deck and skirt against the frame, where all that they stand on is right.</summary>
    internal static void Check(Job job, JobNotes notes)
    {
        if (!notes.IsFull && notes.AreClean("frame", "standOff", "ease", "deck", "skirt"))
        {
            foreach (var fault in DeckCheck.Faults(job, FrameBuilder.Build(job.Frame)))
            {
                notes.Refuse(fault.Place, fault.Said, fault.Allowed);
            }
        }
    }

    private static Measure? Optional(JobSection section, string name) => section.States(name) ? section.Take<Measure>(name, Values.Length) : null;

    private static ImmutableArray<HubHeight> Heights(JobSection section, string name, JobNotes notes)
    {
        var seen = new HashSet<string>(StringComparer.Ordinal);
        var heights = ImmutableArray.CreateBuilder<HubHeight>();
        var key = JobKeys.Find(section.PlaceOf(name))!;
        foreach (var (place, label, element) in section.Entries(name))
        {
            if (notes.IsFull)
            {
                break;
            }

            if (!seen.Add(label))
            {
                notes.Refuse(place, "the same hub again", "each hub once; leave one");
            }
            else if (Values.SignedLength(key, element, out var height, out var hint))
            {
                heights.Add(new HubHeight(label, height));
            }
            else
            {
                notes.Refuse(place, JobNotes.Said(element), (hint.Length > 0 ? hint + "; " : "") + FormattableString.Invariant($"{LengthParser.Allowed}; {key.Least:0} mm to {key.Most / 1000:0} m here, \"-\" below the deck"));
            }
        }

        return heights.ToImmutable();
    }

    private static DeckTilt? Tilt(JobSection section, JobNotes notes)
    {
        var (falls, turns) = (section.States("fall"), section.States("towards"));
        var fall = falls ? section.Take<double>("fall", Values.Fall) : 0;
        var towards = turns ? section.Take<double>("towards", Values.Degrees) : 0;
        if (falls != turns)
        {
            notes.Refuse(section.PlaceOf(falls ? "towards" : "fall"), "nothing", "a fall has both deck.fall and deck.towards");
        }

        return falls && turns && fall > 0 ? new DeckTilt(fall, towards) : null;
    }
}
