namespace Layshaft.Site.Charts.Wear;

/// <summary>Data of <see cref="WearBars"/>.</summary>
/// <param name="Frame">Id prefix, title, description.</param>
/// <param name="Parts">One row per part; at least one.</param>
/// <param name="Share">The axis: share of the wear allowance used; 1 is the limit.</param>
/// <param name="Watch">From this share a part is watched.</param>
/// <param name="Renew">From this share a part is renewed.</param>
public sealed record WearBarsInput(
    ChartFrame Frame, IReadOnlyList<WearBar> Parts, Axis Share, LevelMark Watch, LevelMark Renew);

/// <summary>One part's wear.</summary>
/// <param name="Name">The part.</param>
/// <param name="Share">Share of the allowance between new and limit that is used: 0 as new, 1 at the limit, above 1 beyond it; null where nothing was measured.</param>
/// <param name="Lower">Lower end of the measurement's uncertainty, as a share; null where unknown.</param>
/// <param name="Upper">Upper end of the measurement's uncertainty, as a share; null where unknown.</param>
/// <param name="Grade">The part's grade; null where none was given.</param>
/// <param name="ValueText">The measured value in words, for example "8.31 of 8.50 mm, 63 %".</param>
public sealed record WearBar(string Name, double? Share, double? Lower, double? Upper, GradeMark? Grade, string ValueText);
