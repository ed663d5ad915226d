using MathNet.Numerics;

namespace Layshaft.Engineering.Life;

/// <summary>The Weibull log-likelihood of one sample and its maxima along the lines that the estimates need.</summary>
internal sealed class WeibullLikelihood
{
    private const double Reach = 100; // in log units: a factor of e^100 either way is beyond any life

    private readonly double[] logs; // log of use over the longest use: powers cannot overflow
    private readonly bool[] failed;
    private readonly double failedLogSum;

    public WeibullLikelihood(IReadOnlyList<ObservedLife> lives)
    {
        LongestLog = Math.Log(lives.Max(life => life.Amount));
        logs = [.. lives.Select(life => Math.Log(life.Amount) - LongestLog)];
        failed = [.. lives.Select(life => life.Failed)];
        Failures = failed.Count(flag => flag);
        failedLogSum = CompensatedSum.Of(logs.Where((_, index) => failed[index]));
    }

    public int Failures { get; }

    public int Units => logs.Length;

    private double LongestLog { get; }

    /// <summary>Log-likelihood with densities per unit of use.</summary>
    public double At(double shape, double scale)
    {
        var logScale = Math.Log(scale) - LongestLog;
        var hazard = CompensatedSum.Of(logs.Select(log => Math.Exp(shape * (log - logScale))));
        return Failures * (Math.Log(shape) - shape * logScale - LongestLog) + (shape - 1) * failedLogSum - hazard;
    }

    /// <summary>The shape that maximises the likelihood, found in log β, where the profile score falls through zero once.</summary>
    public double BestShape()
    {
        double Score(double logShape)
        {
            var shape = Math.Exp(logShape);
            var (powers, weighted) = PowerSums(shape);
            return 1 / shape + failedLogSum / Failures - weighted / powers;
        }

        var root = RootSearch.FallingThroughZero(Score, 0, 0.5, Reach);
        return Math.Exp(root ?? throw new InvalidOperationException("The sample has no spread; this was to be checked before."));
    }

    /// <summary>The scale that maximises the likelihood for a given shape: η^β = Σ t^β / failures.</summary>
    public double BestScale(double shape) =>
        Math.Exp(LongestLog + Math.Log(PowerSums(shape).Powers / Failures) / shape);

    /// <summary>Log-likelihood for a given shape, at the best scale.</summary>
    public double ProfileOfShape(double shape) => At(shape, BestScale(shape));

    /// <summary>Log-likelihood for a given logarithm of the life by which a share has failed, at the best shape.</summary>
    public double ProfileOfLife(double logLife, double share)
    {
        var w = Math.Log(-SpecialFunctions.Log1p(-share));
        var offset = logLife - LongestLog;

        // d/dk of Σ failed (k·a + w + log k) − e^w Σ e^(k·a), with a = log t − log life; concave in the shape k.
        double Score(double logShape)
        {
            var shape = Math.Exp(logShape);
            var hazard = new CompensatedSum();
            foreach (var log in logs)
            {
                hazard.Add((log - offset) * Math.Exp(w + shape * (log - offset)));
            }

            return Failures / shape + failedLogSum - Failures * offset - hazard.Value;
        }

        if (RootSearch.FallingThroughZero(Score, 0, 0.5, Reach) is not { } root)
        {
            return double.NegativeInfinity;
        }

        var best = Math.Exp(root);
        return At(best, Math.Exp(logLife - w / best));
    }

    /// <summary>Inverse of the observed information in (μ, log σ).</summary>
    public WeibullCovariance CovarianceAt(double shape, double scale)
    {
        var logScale = Math.Log(scale) - LongestLog;
        var (locations, shapes, mixed) = (new CompensatedSum(), new CompensatedSum(), new CompensatedSum());
        for (var index = 0; index < logs.Length; index++)
        {
            var z = shape * (logs[index] - logScale);
            var hazard = Math.Exp(z);
            var event01 = failed[index] ? 1 : 0;
            locations.Add(shape * shape * hazard);
            shapes.Add(z * (hazard - event01) + z * z * hazard);
            mixed.Add(shape * (hazard - event01 + z * hazard));
        }

        var determinant = locations.Value * shapes.Value - mixed.Value * mixed.Value;
        return new WeibullCovariance(shapes.Value / determinant, locations.Value / determinant, -mixed.Value / determinant);
    }

    private (double Powers, double Weighted) PowerSums(double shape)
    {
        var powers = new CompensatedSum();
        var weighted = new CompensatedSum();
        foreach (var log in logs)
        {
            var power = Math.Exp(shape * log);
            powers.Add(power);
            weighted.Add(power * log);
        }

        return (powers.Value, weighted.Value);
    }
}
