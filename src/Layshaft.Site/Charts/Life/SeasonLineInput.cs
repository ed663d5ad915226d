namespace Layshaft.Site.Charts.Life;

/// <summary>Data of a <see cref="SeasonLine"/>.</summary>
/// <param name="Frame">Id prefix, title, description.</param>
/// <param name="Seasons">The seasons, in order; at least one.</param>
/// <param name="Jobs">The jobs; each inside the seasons' span or beside it.</param>
public sealed record SeasonLineInput(ChartFrame Frame, IReadOnlyList<ChartSeason> Seasons, IReadOnlyList<JobMark> Jobs);

/// <summary>One season.</summary>
/// <param name="From">First day, as a day number.</param>
/// <param name="To">Last day, as a day number; above <paramref name="From"/>.</param>
/// <param name="Label">Its name, for example the year.</param>
public sealed record ChartSeason(double From, double To, string Label);

/// <summary>One job on the line.</summary>
/// <param name="Day">Its day, as a day number.</param>
/// <param name="Label">Date and what was done, in few words.</param>
/// <param name="Link">Where its page is: a relative address or <c>#fragment</c>; null draws no link.</param>
/// <param name="AccessibleName">What the link says when read aloud.</param>
/// <param name="Grade">The worst grade found; null draws a plain mark.</param>
public sealed record JobMark(double Day, string Label, string? Link, string AccessibleName, GradeMark? Grade);
