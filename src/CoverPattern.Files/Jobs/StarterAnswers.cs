using System;
using CoverPattern.Patterns.Jobs;

namespace CoverPattern.Files.Jobs;

/// <summary>Answers to the six questions of a starter job, as typed; the reader of jobs judges them.</summary>
/// <param name="Date">Day of the order.</param>
public sealed record StarterAnswers(DateOnly Date)
{
    /// <summary>What the shop calls the order; may be empty.</summary>
    public string Title { get; init; } = "";

    /// <summary>Question 1: what the size states.</summary>
    public FrameMeasure Measure { get; init; } = FrameMeasure.Diameter;

    /// <summary>Question 1: the size, such as "24 ft".</summary>
    public string Size { get; init; } = "5 m";

    /// <summary>Question 2: parts into which an edge of the solid is divided.</summary>
    public int Frequency { get; init; } = 3;

    /// <summary>Question 2: the cut, by name or by rows from the top, such as "5/8" or "5".</summary>
    public string Cut { get; init; } = "5/8";

    /// <summary>Question 3: how far the finished edge hangs below the lowest hub centres; 0 where the cover ends on the deck.</summary>
    public string Drop { get; init; } = "60 mm";

    /// <summary>Question 4: half the outer diameter of the struts' tube.</summary>
    public string TubeRadius { get; init; } = "17 mm";

    /// <summary>Question 4: how far the hub stands out above the hub centre.</summary>
    public string HubHeight { get; init; } = "25 mm";

    /// <summary>Question 5: the shop's name for the cloth.</summary>
    public string ClothName { get; init; } = "cover cloth";

    /// <summary>Question 5: full width of the roll, as measured.</summary>
    public string RollWidth { get; init; } = "2.05 m";

    /// <summary>Question 6: how pieces are joined.</summary>
    public MakeUpForm MakeUp { get; init; } = MakeUpForm.Plain;
}
