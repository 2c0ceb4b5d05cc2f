namespace CoverPattern.Patterns.Openings;

/// <summary>How a straight step over a shell ended.</summary>
internal enum WalkStop
{
    /// <summary>It came to its end.</summary>
    Arrived,

    /// <summary>It came to the finished lower edge.</summary>
    AtHem,

    /// <summary>It came to another edge at which the cover ends.</summary>
    AtBorder,

    /// <summary>It came too near to a hub, or to where a line runs into the lower edge.</summary>
    AtCorner,

    /// <summary>It touches a line or crosses it twice at nearly one place.</summary>
    Touches,

    /// <summary>It came to a face that is not seen from the plane of the outline, or has no place in space.</summary>
    TurnedAway,
}
