namespace Layshaft.Site.Charts;

/// <summary>
/// The two widths that a chart is drawn for. One drawing cannot serve both a phone and a sheet of paper: scaled to
/// 350 px a wide chart's text falls below 11 px, and a narrow one blown up is coarse.
/// </summary>
public enum ChartSize
{
    /// <summary>720 units wide: a tablet, a desk, a printed page.</summary>
    Wide,

    /// <summary>360 units wide: a phone, or one column of two. Text stays above 11 px down to 305 px.</summary>
    Compact,
}
