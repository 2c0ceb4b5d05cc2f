namespace CoverPattern.Patterns.Jobs;

/// <summary>How facets are made up into panels: what is cut as one piece of cloth.</summary>
public enum PanelForm
{
    /// <summary>Each facet is a panel of its own.</summary>
    Facets,

    /// <summary>Each row of facets is cut into parts.</summary>
    Bands,

    /// <summary>The rows together are cut into sectors from top to base.</summary>
    Gores,

    /// <summary>Facets that are named make one panel.</summary>
    Group,
}
