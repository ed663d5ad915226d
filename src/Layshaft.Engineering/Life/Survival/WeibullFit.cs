using MathNet.Numerics;

namespace Layshaft.Engineering.Life;

/// <summary>A fitted Weibull distribution of life, with its uncertainty. Amounts are in <see cref="Measure"/>.</summary>
public sealed record WeibullFit : LifeEstimate
{
    // With few failures the signed root of the likelihood ratio has not the mean 0 and the variance 1, but nearly RootMean / √failures and
    // 1 + RootVariance / failures: found by simulating inspections every 10 to 30 h of 8 to 100 parts. The benchmark named coverage shows how often
    // the bounds hold with them.
    private const double RootMean = 0.55;
    private const double RootVariance = 0.5;

    private readonly WeibullLikelihood likelihood;

    internal WeibullFit(UseMeasure measure, WeibullLikelihood likelihood, double shape, double scale)
    {
        this.likelihood = likelihood;
        Measure = measure;
        Shape = shape;
        Scale = scale;
        LogLikelihood = likelihood.At(shape, scale);
        Covariance = likelihood.CovarianceAt(shape, scale);
    }

    /// <summary>What lives are counted in.</summary>
    public UseMeasure Measure { get; }

    /// <summary>Shape β: below 1 failures come early, near 1 by chance, above 1 by wear.</summary>
    public double Shape { get; }

    /// <summary>Scale η: the use by which 63.2 % have failed.</summary>
    public double Scale { get; }

    /// <summary>Log-likelihood at the maximum.</summary>
    public double LogLikelihood { get; }

    /// <summary>Number of lives, failed or still good.</summary>
    public int Units => likelihood.Units;

    /// <summary>Number of lives that ended in failure.</summary>
    public int Failures => likelihood.Failures;

    /// <summary>Covariance of μ = log η and log σ (σ = 1/β) from the observed information.</summary>
    public WeibullCovariance Covariance { get; }

    /// <summary>Standard error of the scale, in the measure of the lives (delta method).</summary>
    public double ScaleStandardError => Scale * Math.Sqrt(Covariance.LogScaleVariance);

    /// <summary>Standard error of the shape (delta method).</summary>
    public double ShapeStandardError => Shape * Math.Sqrt(Covariance.LogShapeVariance);

    /// <summary>Mean life, η Γ(1 + 1/β).</summary>
    public double MeanLife => Scale * SpecialFunctions.Gamma(1 + 1 / Shape);

    /// <summary>Standard deviation of life.</summary>
    public double StandardDeviationOfLife =>
        Scale * Math.Sqrt(SpecialFunctions.Gamma(1 + 2 / Shape) - Math.Pow(SpecialFunctions.Gamma(1 + 1 / Shape), 2));

    /// <summary>Share still good at a given use.</summary>
    /// <param name="use">Use since new, not negative.</param>
    /// <returns>Between 0 and 1.</returns>
    public double SurvivalAt(double use) => use <= 0 ? 1 : Math.Exp(-Math.Pow(use / Scale, Shape));

    /// <summary>The life by which a share has failed, B10 for 0.10 (ISO 281 calls it L10).</summary>
    /// <param name="share">Share failed, between 0 and 1.</param>
    /// <returns>The life.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The share is not strictly between 0 and 1.</exception>
    public double LifeAt(double share) => Scale * Math.Exp(LogWeight(share) / Shape);

    /// <summary>Standard error of log of <see cref="LifeAt"/> (delta method).</summary>
    /// <param name="share">Share failed, between 0 and 1.</param>
    /// <returns>Standard error on the log scale.</returns>
    public double LogLifeStandardError(double share)
    {
        var lever = LogWeight(share) / Shape;
        return Math.Sqrt(Covariance.LogScaleVariance + 2 * lever * Covariance.LogScaleLogSigma + lever * lever * Covariance.LogShapeVariance);
    }

    /// <summary>Bounds of <see cref="LifeAt"/> by likelihood ratio.</summary>
    /// <param name="share">Share failed, between 0 and 1.</param>
    /// <param name="level">Two-sided level, between 0 and 1.</param>
    /// <param name="forFewFailures">
    /// Whether the signed root of the likelihood ratio is corrected for its mean and variance with few failures. Without, the lower
    /// bound is above the truth too often.
    /// </param>
    /// <returns>The bounds; a side that the likelihood never excludes is open.</returns>
    public Bounds LifeBounds(double share, double level = 0.95, bool forFewFailures = true)
    {
        _ = LogWeight(share);
        var (mean, deviation) = forFewFailures ? (RootMean / Math.Sqrt(Failures), Math.Sqrt(1 + RootVariance / Failures)) : (0, 1);
        return ProfileBounds(Math.Log(LifeAt(share)), level, mean, deviation, logLife => likelihood.ProfileOfLife(logLife, share));
    }

    /// <summary>Bounds of <see cref="LifeAt"/> by the delta method on the log scale.</summary>
    /// <param name="share">Share failed, between 0 and 1.</param>
    /// <param name="level">Two-sided level, between 0 and 1.</param>
    /// <returns>The bounds.</returns>
    public Bounds LifeDeltaBounds(double share, double level = 0.95) => LogBounds(LifeAt(share), LogLifeStandardError(share), level);

    /// <summary>Bounds of the shape by likelihood ratio. A lower bound above 1 says wear-out.</summary>
    /// <param name="level">Two-sided level, between 0 and 1.</param>
    /// <returns>The bounds.</returns>
    public Bounds ShapeBounds(double level = 0.95) =>
        ProfileBounds(Math.Log(Shape), level, 0, 1, logShape => likelihood.ProfileOfShape(Math.Exp(logShape)));

    /// <summary>Bounds of the shape by the delta method on the log scale.</summary>
    /// <param name="level">Two-sided level, between 0 and 1.</param>
    /// <returns>The bounds.</returns>
    public Bounds ShapeDeltaBounds(double level = 0.95) => LogBounds(Shape, Math.Sqrt(Covariance.LogShapeVariance), level);

    /// <summary>Bounds of the scale by the delta method on the log scale.</summary>
    /// <param name="level">Two-sided level, between 0 and 1.</param>
    /// <returns>The bounds.</returns>
    public Bounds ScaleDeltaBounds(double level = 0.95) => LogBounds(Scale, Math.Sqrt(Covariance.LogScaleVariance), level);

    /// <summary>Log-likelihood of the sample at any shape and scale, for plots of the likelihood.</summary>
    /// <param name="shape">Shape, greater than 0.</param>
    /// <param name="scale">Scale, greater than 0.</param>
    /// <returns>The log-likelihood, at most <see cref="LogLikelihood"/>.</returns>
    public double LogLikelihoodAt(double shape, double scale) => likelihood.At(shape, scale);

    private static double LogWeight(double share) => share is > 0 and < 1
        ? Math.Log(-SpecialFunctions.Log1p(-share))
        : throw new ArgumentOutOfRangeException(nameof(share), share, "A share lies strictly between 0 and 1, 0.10 for B10.");

    private static Bounds LogBounds(double estimate, double logStandardError, double level)
    {
        Bounds.CheckLevel(level);
        var factor = Math.Exp(Quantiles.Normal(0.5 + level / 2) * logStandardError);
        return new Bounds(level, estimate / factor, estimate * factor);
    }

    // The root of twice the fall of the log-likelihood, positive below the estimate and negative above it, has the given mean and deviation.
    private Bounds ProfileBounds(double logEstimate, double level, double rootMean, double rootDeviation, Func<double, double> profile)
    {
        const double FirstStep = 0.25;
        const double Reach = 50; // a factor of e^50 is no bound at all
        Bounds.CheckLevel(level);
        var half = Quantiles.Normal(0.5 + level / 2) * rootDeviation;
        double? Offset(double root, int direction) => root <= 0 ? 0 : RootSearch.FallingThroughZero(
            offset => root * root - 2 * (LogLikelihood - profile(logEstimate + direction * offset)), 0, FirstStep, Reach);
        return new Bounds(
            level,
            Offset(half + rootMean, -1) is { } down ? Math.Exp(logEstimate - down) : null,
            Offset(half - rootMean, 1) is { } up ? Math.Exp(logEstimate + up) : null);
    }
}
