namespace CoverPattern.Files.Results;

/// <summary>Which program made a result.</summary>
public static class ProgramVersion
{
    /// <summary>Name and version, such as "CoverPattern 0.1.0".</summary>
    public static string Text { get; } =
        "CoverPattern " + typeof(ProgramVersion).Assembly.GetName().Version!.ToString(3);
}
