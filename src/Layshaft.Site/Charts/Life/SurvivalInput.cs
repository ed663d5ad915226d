namespace Layshaft.Site.Charts.Life;

/// <summary>Data of a <see cref="SurvivalChart"/>.</summary>
/// <param name="Frame">Id prefix, title, description.</param>
/// <param name="Steps">The estimate without an assumed distribution, in order of usage; may be empty.</param>
/// <param name="Censored">Hours of the parts still running or taken out unfailed.</param>
/// <param name="Until">The longest hours observed, failed or not; above 0.</param>
/// <param name="Weibull">The fitted survival curve; null where there are too few failures for one.</param>
/// <param name="B10">Life that nine parts in ten reach, with bounds; null where it is not known.</param>
/// <param name="Hours">The lower axis.</param>
/// <param name="Surviving">The upright axis, a share from 0 to 1.</param>
/// <param name="StepsLabel">What the steps are, for example "parts seen".</param>
/// <param name="CensoredLabel">What a tick on the steps is, for example "still running".</param>
public sealed record SurvivalInput(
    ChartFrame Frame,
    IReadOnlyList<SurvivalStep> Steps,
    IReadOnlyList<double> Censored,
    double Until,
    NamedPoints? Weibull,
    BoundedMark? B10,
    Axis Hours,
    Axis Surviving,
    string StepsLabel,
    string CensoredLabel);

/// <summary>A stretch in which parts failed; how the estimate comes down within it is not known.</summary>
/// <param name="From">Where the stretch begins, hours.</param>
/// <param name="To">Where it ends, hours; the same for failures at a known moment.</param>
/// <param name="Surviving">Estimated share surviving at its end, 0 to 1.</param>
public sealed record SurvivalStep(double From, double To, double Surviving);
