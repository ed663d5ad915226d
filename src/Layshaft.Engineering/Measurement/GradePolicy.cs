namespace Layshaft.Engineering.Measurement;

/// <summary>How a gearbox's parts are graded from their wear. The shares are compared as measured, without a guard band: the limit has one.</summary>
public sealed record GradePolicy
{
    // Decimal sizes leave a share of three fifths a hair below 0.6 in binary; a part at a threshold has reached it.
    private const double Rounding = 1e-9;

    /// <summary>Sets up a policy.</summary>
    /// <param name="watchFrom">Share of the allowance from which a part is watched, above 0 and up to 1.</param>
    /// <param name="renewFrom">
    /// Share from which it is renewed, above <paramref name="watchFrom"/> and up to 1; <see langword="null"/> where only the limit decides.
    /// </param>
    /// <param name="closeCall">What is done when the limit is too close to call.</param>
    /// <exception cref="ArgumentOutOfRangeException">A share is outside its range.</exception>
    public GradePolicy(double watchFrom, double? renewFrom, CloseCall closeCall)
    {
        if (!(watchFrom > 0 && watchFrom <= 1))
        {
            throw new ArgumentOutOfRangeException(nameof(watchFrom), watchFrom, "watch from a share above 0 % and up to 100 % of the allowance");
        }

        if (renewFrom is { } renew && !(renew > watchFrom && renew <= 1))
        {
            throw new ArgumentOutOfRangeException(nameof(renewFrom), renew, "renew from a share above the one that is watched and up to 100 %");
        }

        (WatchFrom, RenewFrom, CloseCall) = (watchFrom, renewFrom, closeCall);
    }

    /// <summary>Share of the allowance from which a part is watched.</summary>
    public double WatchFrom { get; }

    /// <summary>Share of the allowance from which a part is renewed; <see langword="null"/> where only the limit decides.</summary>
    public double? RenewFrom { get; }

    /// <summary>What is done when the limit is too close to call.</summary>
    public CloseCall CloseCall { get; }

    /// <summary>Grades one measured feature.</summary>
    /// <param name="wear">The feature against new and limit.</param>
    /// <returns>The grade and why.</returns>
    public PartGrade Grade(PartWear wear)
    {
        ArgumentNullException.ThrowIfNull(wear);
        return Grade(wear.Decision.Conformity, wear.ShareUsed.Value);
    }

    /// <summary>Grades from a decision and a share of the allowance.</summary>
    /// <param name="conformity">Decision against the limit.</param>
    /// <param name="shareUsed">Share of the allowance used; 1 at the limit.</param>
    /// <returns>The grade and why.</returns>
    public PartGrade Grade(Conformity conformity, double shareUsed) => OnTheDecimal(conformity, shareUsed + Rounding);

    private PartGrade OnTheDecimal(Conformity conformity, double shareUsed) => conformity switch
    {
        Conformity.Outside => new PartGrade(Measurement.Grade.Renew, GradeReason.OutsideLimit),
        _ when shareUsed >= RenewFrom => new PartGrade(Measurement.Grade.Renew, GradeReason.AllowanceUsed),
        Conformity.TooCloseToCall => new PartGrade(
            CloseCall == CloseCall.Watch ? Measurement.Grade.Watch : Measurement.Grade.Renew, GradeReason.TooCloseToCall)
        {
            MeasureAgain = CloseCall == CloseCall.MeasureAgain,
        },
        _ when shareUsed >= WatchFrom => new PartGrade(Measurement.Grade.Watch, GradeReason.AllowanceWatched),
        _ => new PartGrade(Measurement.Grade.Reuse, GradeReason.WithinAllowance),
    };
}
