using MathNet.Numerics;

namespace Layshaft.Engineering.Life;

/// <summary>
/// The Weibull log-likelihood of one sample and its maxima along the lines that the estimates need. A part last good at
/// l and found worn at w adds log(S(l) − S(w)), one still good log S(l), an exact failure the log of the density, all
/// given that it was good at its entry (Meeker and Escobar, Statistical Methods for Reliability Data, 1998, ch. 7, 8 and
/// 11, from memory).
/// </summary>
/// <remarks>
/// In the logarithm of the rate q = η^−β and the shape β, with powers t^β of usage over the longest usage: without
/// entries the log-likelihood is concave in (β, log q), since each term is the log of a log-concave density's mass
/// over an interval whose ends are linear in both; so each score below falls through zero once.
/// </remarks>
internal sealed class WeibullLikelihood
{
    private const double Reach = 60; // log rate: a factor of e^60 either way is beyond any life
    private const double ShapeReach = 6; // log shape: from 0.0025 to 400

    private readonly Term[] terms;
    private readonly double longestLog;

    public WeibullLikelihood(LifeSample sample)
    {
        longestLog = Math.Log(sample.SeenTo);
        Failures = sample.Failures;
        Units = sample.Lives.Count;
        terms = [.. sample.Lives
            .GroupBy(life => life)
            .Select(same => new Term(Log(same.Key.Entry), Log(same.Key.LastGood), same.Key.FirstWorn is { } worn ? Log(worn) : null, same.Count()))];
    }

    public int Failures { get; }

    public int Units { get; }

    /// <summary>Log-likelihood with densities per unit of usage.</summary>
    public double At(double shape, double scale) => Value(shape, LogRate(shape, scale));

    /// <summary>The shape that maximises the likelihood, or <c>null</c> when it grows for ever steeper distributions.</summary>
    public double? BestShape() => RootOverShape(ProfileScore);

    /// <summary>The scale that maximises the likelihood for a given shape, or <c>null</c> when there is none.</summary>
    public double? BestScale(double shape) =>
        BestLogRate(shape) is { } logRate ? Math.Exp(longestLog - logRate / shape) : null;

    /// <summary>Derivative of the log-likelihood by the shape at the best rate for it; NaN when there is none.</summary>
    public double ProfileScore(double shape) =>
        BestLogRate(shape) is { } logRate ? Slopes(shape, logRate).ByShape : double.NaN;

    /// <summary>Log-likelihood for a given shape, at the best scale.</summary>
    public double ProfileOfShape(double shape) =>
        BestLogRate(shape) is { } logRate ? Value(shape, logRate) : double.NegativeInfinity;

    /// <summary>Log-likelihood for a given logarithm of the life by which a share has failed, at the best shape.</summary>
    public double ProfileOfLife(double logLife, double share)
    {
        var weight = Math.Log(-SpecialFunctions.Log1p(-share));
        var offset = logLife - longestLog;
        double LogRateFor(double shape) => weight - shape * offset;
        double Score(double shape)
        {
            var slopes = Slopes(shape, LogRateFor(shape));
            return slopes.ByShape - offset * slopes.ByLogRate;
        }

        return RootOverShape(Score) is { } best ? Value(best, LogRateFor(best)) : double.NegativeInfinity;
    }

    /// <summary>Inverse of the observed information in (μ, log σ), μ = log η, σ = 1/β.</summary>
    public WeibullCovariance CovarianceAt(double shape, double scale)
    {
        var logRate = LogRate(shape, scale);
        var (rates, mixed, shapes) = Curvatures(shape, logRate);
        var determinant = rates * shapes - mixed * mixed;
        // Covariance of (log q, β), then μ = −log q / β and log σ = −log β by their derivatives.
        var (varianceOfRate, covariance, varianceOfShape) = (-shapes / determinant, mixed / determinant, -rates / determinant);
        var (byRate, byShape) = (-1 / shape, logRate / (shape * shape));
        return new WeibullCovariance(
            byRate * byRate * varianceOfRate + 2 * byRate * byShape * covariance + byShape * byShape * varianceOfShape,
            varianceOfShape / (shape * shape),
            -(byRate * covariance + byShape * varianceOfShape) / shape);
    }

    /// <summary>Searches the shape at which a score, positive for smaller and negative for larger shapes, is zero.</summary>
    public static double? RootOverShape(Func<double, double> score) =>
        RootSearch.FallingThroughZero(logShape => score(Math.Exp(logShape)), 0, 0.5, ShapeReach) is { } root ? Math.Exp(root) : null;

    private double? BestLogRate(double shape) =>
        RootSearch.FallingThroughZero(logRate => Slopes(shape, logRate).ByLogRate, 0, 1, Reach);

    private double LogRate(double shape, double scale) => -shape * (Math.Log(scale) - longestLog);

    private double Log(double usage) => Math.Log(usage) - longestLog;

    private double Value(double shape, double logRate)
    {
        var rate = Math.Exp(logRate);
        var sum = new CompensatedSum();
        foreach (var term in terms)
        {
            var survived = rate * (Power(term.Good, shape) - Power(term.Entry, shape));
            var ended = term.Worn is not { } worn ? 0
                : worn == term.Good ? Math.Log(shape) + logRate + (shape - 1) * term.Good - longestLog
                : Math.Log(-SpecialFunctions.Expm1(-rate * (Power(worn, shape) - Power(term.Good, shape))));
            sum.Add(term.Count * (ended - survived));
        }

        return sum.Value;
    }

    private (double ByShape, double ByLogRate) Slopes(double shape, double logRate)
    {
        var rate = Math.Exp(logRate);
        var (byShape, byRate) = (new CompensatedSum(), new CompensatedSum());
        foreach (var term in terms)
        {
            var (good, entry) = (Power(term.Good, shape), Power(term.Entry, shape));
            var rateSlope = -rate * (good - entry);
            var shapeSlope = -rate * (good * Finite(term.Good) - entry * Finite(term.Entry));
            if (term.Worn is { } worn)
            {
                if (worn == term.Good)
                {
                    rateSlope += 1;
                    shapeSlope += 1 / shape + term.Good;
                }
                else
                {
                    var end = Power(worn, shape);
                    var odds = 1 / SpecialFunctions.Expm1(rate * (end - good));
                    rateSlope += rate * (end - good) * odds;
                    shapeSlope += rate * (end * worn - good * Finite(term.Good)) * odds;
                }
            }

            byShape.Add(term.Count * shapeSlope);
            byRate.Add(term.Count * rateSlope);
        }

        return (byShape.Value, byRate.Value);
    }

    private (double ByRate, double Mixed, double ByShape) Curvatures(double shape, double logRate)
    {
        var rate = Math.Exp(logRate);
        var (byRate, mixed, byShape) = (new CompensatedSum(), new CompensatedSum(), new CompensatedSum());
        foreach (var term in terms)
        {
            var (good, entry) = (Power(term.Good, shape), Power(term.Entry, shape));
            var (goodLog, entryLog) = (Finite(term.Good), Finite(term.Entry));
            var rates = -rate * (good - entry);
            var crossed = -rate * (good * goodLog - entry * entryLog);
            var shapes = -rate * (good * goodLog * goodLog - entry * entryLog * entryLog);
            if (term.Worn is { } worn)
            {
                if (worn == term.Good)
                {
                    shapes -= 1 / (shape * shape);
                }
                else
                {
                    // With x = q (W − G): log(1 − e^−x) has the slopes o and −o (1 + o) by x, o = 1 / (e^x − 1).
                    var end = Power(worn, shape);
                    var odds = 1 / SpecialFunctions.Expm1(rate * (end - good));
                    var bend = -odds * (1 + odds);
                    var x = rate * (end - good);
                    var xByShape = rate * (end * worn - good * goodLog);
                    rates += odds * x + bend * x * x;
                    crossed += odds * xByShape + bend * x * xByShape;
                    shapes += odds * rate * (end * worn * worn - good * goodLog * goodLog) + bend * xByShape * xByShape;
                }
            }

            byRate.Add(term.Count * rates);
            mixed.Add(term.Count * crossed);
            byShape.Add(term.Count * shapes);
        }

        return (byRate.Value, mixed.Value, byShape.Value);
    }

    private static double Power(double log, double shape) => Math.Exp(shape * log);

    // The power of a usage of 0 is 0, and so is its product with the logarithm.
    private static double Finite(double log) => double.IsNegativeInfinity(log) ? 0 : log;

    private readonly record struct Term(double Entry, double Good, double? Worn, int Count);
}
