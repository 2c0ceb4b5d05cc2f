using CoverPattern.Patterns.Jobs;

namespace CoverPattern.Patterns.Frames;

/// <summary>Measured struts make no frame that could be covered.</summary>
/// <param name="label">Facet, hub, or "struts".</param>
/// <param name="message">Sentence with label, number, limit and the way out.</param>
public sealed class StrutsException(string label, string message) : WorkException(label, message);
