namespace CoverPattern.Lays.Nesting;

/// <summary>What can be wrong with a layout.</summary>
public enum NestingFault
{
    /// <summary>Two items share cloth.</summary>
    Overlap,

    /// <summary>Two items are closer than asked.</summary>
    TooClose,

    /// <summary>An item reaches over an edge of the strip.</summary>
    Outside,

    /// <summary>An item is placed too seldom or too often, or is not in the task.</summary>
    WrongCount,

    /// <summary>An item lies in a turn it may not take.</summary>
    WrongTurn,

    /// <summary>An item lies turned over that may not.</summary>
    WrongFace,

    /// <summary>A shift that is not on the grid: the item does not lie as its outline says.</summary>
    OffGrid,

    /// <summary>An item lies on a flawed area that it does not bear.</summary>
    OnFlaw,

    /// <summary>A copy that was to stay where it lies was moved.</summary>
    Moved,

    /// <summary>The stated length is not that of the items.</summary>
    WrongLength,
}
