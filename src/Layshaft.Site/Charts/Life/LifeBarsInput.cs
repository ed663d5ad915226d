namespace Layshaft.Site.Charts.Life;

/// <summary>Data of <see cref="LifeBars"/>.</summary>
/// <param name="Frame">Id prefix, title, description.</param>
/// <param name="Parts">One row per place in the gearbox; at least one.</param>
/// <param name="From">Start of the axis: hours, or a date as a day number.</param>
/// <param name="To">End of the axis; above <paramref name="From"/>.</param>
/// <param name="Ticks">Where the axis is marked: seasons, or round hours.</param>
/// <param name="AxisName">What the axis is; empty where the ticks say it.</param>
/// <param name="Words">The words of the key.</param>
public sealed record LifeBarsInput(
    ChartFrame Frame,
    IReadOnlyList<LifeBar> Parts,
    double From,
    double To,
    IReadOnlyList<AxisTick> Ticks,
    string AxisName,
    LifeWords Words);

/// <summary>One place in the gearbox and the parts that served there, in order.</summary>
/// <param name="Name">The place, for example "3rd driven gear".</param>
/// <param name="Spans">What served there.</param>
public sealed record LifeBar(string Name, IReadOnlyList<BarSpan> Spans);

/// <summary>One part's service in one place.</summary>
/// <param name="From">When it went in.</param>
/// <param name="To">When it came out, or the last day known; not below <paramref name="From"/>.</param>
/// <param name="Start">How it came.</param>
/// <param name="End">How it left.</param>
/// <param name="Label">Written in the bar where it fits, for example "38 h"; null writes none.</param>
public sealed record BarSpan(double From, double To, BarStart Start, BarEnd End, string? Label);

/// <summary>How a part came to its place.</summary>
public enum BarStart
{
    /// <summary>New.</summary>
    Fitted,

    /// <summary>From another unit, with the hours it had.</summary>
    MovedIn,
}

/// <summary>How a part left its place.</summary>
public enum BarEnd
{
    /// <summary>It is still there.</summary>
    Running,

    /// <summary>It was renewed.</summary>
    Renewed,

    /// <summary>It went to another unit.</summary>
    MovedOut,
}

/// <summary>The words of the key under <see cref="LifeBars"/>; a mark that the chart does not use is left out.</summary>
/// <param name="Fitted">Fitted new.</param>
/// <param name="MovedIn">Moved in from another unit.</param>
/// <param name="Running">Still running.</param>
/// <param name="Renewed">Renewed.</param>
/// <param name="MovedOut">Moved to another unit.</param>
public sealed record LifeWords(string Fitted, string MovedIn, string Running, string Renewed, string MovedOut);
