namespace CoverPattern.Patterns.Jobs;

/// <summary>A set of seams of a cover.</summary>
public enum SeamSet
{
    /// <summary>Seams along a ring of hubs, between two rows.</summary>
    Rows,

    /// <summary>All others: between pieces side by side, with those of the skirt.</summary>
    Uprights,

    /// <summary>Seams over struts that are named.</summary>
    Struts,
}
