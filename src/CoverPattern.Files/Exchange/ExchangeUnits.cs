namespace CoverPattern.Files.Exchange;

/// <summary>In what an exchange file counts lengths.</summary>
public enum ExchangeUnits
{
    /// <summary>Millimetres with two decimals.</summary>
    Metric,

    /// <summary>Inches with four decimals.</summary>
    English,
}
