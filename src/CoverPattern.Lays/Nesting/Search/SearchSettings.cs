namespace CoverPattern.Lays.Nesting.Search;

/// <summary>Numbers that steer the search; the defaults are the measured ones of docs/nesting-engine.md.</summary>
internal sealed record SearchSettings
{
    public static SearchSettings Default { get; } = new();

    /// <summary>Places tried for one copy at which it leans against another.</summary>
    public int LeaningSamples { get; init; } = 30;

    /// <summary>Places tried anywhere on the strip.</summary>
    public int WideSamples { get; init; } = 10;

    /// <summary>Places tried near where the copy lies.</summary>
    public int NearSamples { get; init; } = 20;

    /// <summary>Near means within this part of the shape's diameter.</summary>
    public double NearReach { get; init; } = 0.1;

    /// <summary>Best places that are refined.</summary>
    public int Refined { get; init; } = 3;

    /// <summary>First step of refining, part of the diameter.</summary>
    public double FirstStep { get; init; } = 0.05;

    /// <summary>Last step of refining all kept places, part of the diameter.</summary>
    public double CoarseStop { get; init; } = 1e-3;

    /// <summary>Last step of refining the winner, part of the diameter.</summary>
    public double FineStop { get; init; } = 1e-4;

    /// <summary>Part of the length the first worker takes off at each success.</summary>
    public double Shortening { get; init; } = 0.001;

    /// <summary>The same for the second worker. 0.003 was better on large sets and worse on small ones, within the noise of two seeds.</summary>
    public double BoldShortening { get; init; } = 0.001;

    /// <summary>Sweeps without gain that end an attempt while shortening.</summary>
    public int Patience { get; init; } = 80;

    /// <summary>Part by which the sum of severities must fall to count as a gain.</summary>
    public double LeastGain { get; init; }

    /// <summary>Attempts without gain that end the struggle for a length.</summary>
    public int Strikes { get; init; } = 3;

    /// <summary>Part of the effort spent on shortening; the rest goes to pressing.</summary>
    public double ShorteningShare { get; init; } = 0.8;

    /// <summary>Part of the length taken off at the start and at the end of pressing.</summary>
    public double FirstPress { get; init; } = 0.0005;

    /// <inheritdoc cref="FirstPress"/>
    public double LastPress { get; init; } = 0.00001;

    public int PressPatience { get; init; } = 100;

    public int PressStrikes { get; init; } = 5;

    /// <summary>Whether pair tables are used; they change the speed only.</summary>
    public bool Tables { get; init; } = true;

    /// <summary>Longest step to an exact contact, part of the diameter; 0 tries none.</summary>
    public double ContactReach { get; init; } = 0.01;

    /// <summary>Contacts tried along one axis, nearest first.</summary>
    public int ContactTries { get; init; } = 8;

    /// <summary>First step of turning a copy that may lie in any turn, degrees; 0 turns to the prepared turns only.</summary>
    public double FirstTurn { get; init; } = 2;

    /// <summary>Last step of turning, degrees.</summary>
    public double LastTurn { get; init; } = 0.1;

    /// <summary>One of so many searches for a place ends with turning: making a shape costs as much as many places.</summary>
    public int TurnEvery { get; init; } = 4;

    /// <summary>Place evaluations of one worker in one work unit.</summary>
    public int EvaluationsPerUnit { get; init; } = 50_000;
}
