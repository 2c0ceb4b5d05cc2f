namespace CoverPattern.Patterns.Jobs;

/// <summary>How the cut line goes round a corner between two seams.</summary>
public enum CornerStyle
{
    /// <summary>The allowances' lines meet in a point; a far point is cut off.</summary>
    Mitred,

    /// <summary>Cut square across where the wider allowance's width is reached.</summary>
    Squared,

    /// <summary>Cut across close to the sew line's corner, so that no cloth stands beyond the piece when the seams are pressed back.</summary>
    Trimmed,
}
