namespace Layshaft.Engineering.Life;

/// <summary>
/// Covariance of the Weibull parameters on the scale on which they are best behaved. log β = −log σ, so its variance is
/// that of log σ and its covariance with μ the negative of the one given.
/// </summary>
/// <param name="LogScaleVariance">Variance of μ = log η.</param>
/// <param name="LogShapeVariance">Variance of log β = −log σ.</param>
/// <param name="LogScaleLogSigma">Covariance of μ and log σ.</param>
public sealed record WeibullCovariance(double LogScaleVariance, double LogShapeVariance, double LogScaleLogSigma);
