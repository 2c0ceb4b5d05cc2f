namespace CoverPattern.Files.Drawings;

/// <summary>What a machine may do with the lines of a layer.</summary>
public enum LayerUse
{
    /// <summary>A knife or a laser follows the lines.</summary>
    Cut,

    /// <summary>A pen draws the lines on the piece; a knife never follows them.</summary>
    Draw,

    /// <summary>Round the pieces: for people and screens, not for the cloth.</summary>
    Sheet,
}
