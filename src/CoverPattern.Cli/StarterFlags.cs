using System;
using System.CommandLine;
using System.Globalization;
using System.IO;
using CoverPattern.Files.Jobs;
using CoverPattern.Patterns.Jobs;

namespace CoverPattern.Cli;

/// <summary>Flags that answer the six questions of a starter job.</summary>
internal sealed class StarterFlags
{
    private static readonly StarterAnswers Defaults = new(default(DateOnly));

    private readonly Option<string> title = new("--title") { Description = "What the shop calls the order.", DefaultValueFactory = _ => Defaults.Title };
    private readonly Option<string> date = new("--date") { Description = "Day of the order, such as 2026-03-01; today when not given." };
    private readonly Option<FrameMeasure> measure = new("--measure") { Description = "What the size states.", DefaultValueFactory = _ => Defaults.Measure };
    private readonly Option<string> size = new("--size") { Description = "Size of the frame, hub centre to hub centre.", DefaultValueFactory = _ => Defaults.Size };
    private readonly Option<int> frequency = new("--frequency") { Description = "Parts into which an edge of the solid is divided.", DefaultValueFactory = _ => Defaults.Frequency };
    private readonly Option<string> cut = new("--cut") { Description = "The cut, by name or by rows from the top.", DefaultValueFactory = _ => Defaults.Cut };
    private readonly Option<string> drop = new("--drop") { Description = "How far the finished edge hangs below the lowest hub centres.", DefaultValueFactory = _ => Defaults.Drop };
    private readonly Option<string> tube = new("--tube-radius") { Description = "Half the outer diameter of the tube.", DefaultValueFactory = _ => Defaults.TubeRadius };
    private readonly Option<string> hub = new("--hub-height") { Description = "How far the hub stands out above the hub centre.", DefaultValueFactory = _ => Defaults.HubHeight };
    private readonly Option<string> cloth = new("--cloth") { Description = "Name of the cloth.", DefaultValueFactory = _ => Defaults.ClothName };
    private readonly Option<string> roll = new("--roll-width") { Description = "Full width of the roll.", DefaultValueFactory = _ => Defaults.RollWidth };
    private readonly Option<MakeUpForm> seam = new("--seam") { Description = "How pieces are joined.", DefaultValueFactory = _ => Defaults.MakeUp };

    private Option[] All => [title, date, .. Answering];

    /// <summary>The flags that answer questions; title and date answer none.</summary>
    private Option[] Answering => [measure, size, frequency, cut, drop, tube, hub, cloth, roll, seam];

    internal void AddTo(Command command) => Array.ForEach(All, command.Options.Add);

    /// <summary>Whether any question is answered by a flag; then none is asked.</summary>
    internal bool AnyGiven(ParseResult words) => Array.Exists(Answering, option => words.GetResult(option) is { Implicit: false });

    /// <summary>The answers, or null when the date is none; the reader of jobs judges the rest.</summary>
    internal StarterAnswers? Answers(ParseResult words, TextWriter error)
    {
        var day = DateOnly.FromDateTime(TimeProvider.System.GetLocalNow().DateTime);
        var typed = words.GetValue(date);
        if (typed is not null && !DateOnly.TryParseExact(typed, "O", CultureInfo.InvariantCulture, DateTimeStyles.None, out day))
        {
            error.WriteLine($"--date: said {typed}. A day such as 2026-03-01 is allowed.");
            return null;
        }

        return new StarterAnswers(day)
        {
            Title = words.GetRequiredValue(title),
            Measure = words.GetValue(measure),
            Size = words.GetRequiredValue(size),
            Frequency = words.GetValue(frequency),
            Cut = words.GetRequiredValue(cut),
            Drop = words.GetRequiredValue(drop),
            TubeRadius = words.GetRequiredValue(tube),
            HubHeight = words.GetRequiredValue(hub),
            ClothName = words.GetRequiredValue(cloth),
            RollWidth = words.GetRequiredValue(roll),
            MakeUp = words.GetValue(seam),
        };
    }
}
