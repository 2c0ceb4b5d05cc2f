using System;
using System.Globalization;
using System.IO;
using CoverPattern.Files.Jobs;
using CoverPattern.Patterns.Jobs;

namespace CoverPattern.Cli;

/// <summary>Asks the six questions of a starter job; an empty answer takes what stands in brackets.</summary>
internal sealed class StarterQuestions(TextReader input, TextWriter output)
{
    internal StarterAnswers Ask(StarterAnswers answers)
    {
        answers = answers with { Size = Line("1. Sphere diameter of the frame, hub centre to hub centre", answers.Size) };
        var frequency = Line("2. Frequency: parts of an edge of the solid, 1 to 12", answers.Frequency.ToString(CultureInfo.InvariantCulture));
        answers = answers with
        {
            Frequency = int.TryParse(frequency, NumberStyles.None, CultureInfo.InvariantCulture, out var parts) ? parts : 0,
            Cut = Line("   Cut: its name, or rows from the top", answers.Cut),
        };
        answers = answers with { Drop = Line("3. How far the finished edge hangs below the lowest hub centres", answers.Drop) };
        answers = answers with
        {
            TubeRadius = Line("4. Half the outer diameter of the tube", answers.TubeRadius),
            HubHeight = Line("   How far the hub stands out above its centre", answers.HubHeight),
        };
        answers = answers with
        {
            ClothName = Line("5. Name of the cloth", answers.ClothName),
            RollWidth = Line("   Full width of the roll, as measured", answers.RollWidth),
        };
        return answers with { MakeUp = Choice("6. How pieces are joined: plain, lapped, felled or welded", answers.MakeUp) };
    }

    private string Line(string question, string usual)
    {
        output.Write($"{question} [{usual}]: ");
        var answer = input.ReadLine()?.Trim();
        return string.IsNullOrEmpty(answer) ? usual : answer;
    }

    /// <summary>Asks again until the word is one of those named, or the input ends.</summary>
    private MakeUpForm Choice(string question, MakeUpForm usual)
    {
        while (true)
        {
            var word = Line(question, usual.ToString().ToLowerInvariant());
            if (Enum.TryParse<MakeUpForm>(word, ignoreCase: true, out var choice) && Enum.IsDefined(choice))
            {
                return choice;
            }

            output.WriteLine($"\"{word}\" is none of these.");
        }
    }
}
