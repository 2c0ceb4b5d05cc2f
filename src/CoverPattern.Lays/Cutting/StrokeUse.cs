namespace CoverPattern.Lays.Cutting;

/// <summary>What a machine does along a stroke, in the order in which it is done on one piece.</summary>
public enum StrokeUse
{
    /// <summary>A pen draws it.</summary>
    Draw,

    /// <summary>A knife or punch makes the hole of a mark.</summary>
    Pierce,

    /// <summary>A knife slits a notch.</summary>
    Notch,

    /// <summary>A knife cuts a hole.</summary>
    InnerCut,

    /// <summary>A knife cuts the piece out; last, because the cloth holds the piece until then.</summary>
    Outline,
}
