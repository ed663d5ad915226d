using Layshaft.Engineering.Settings;
using UnitsNet;

namespace Layshaft.Cli.Bench;

/// <summary>A question for a shim pack.</summary>
/// <param name="About">What it is for, in words; null where only figures were given.</param>
/// <param name="TrialShims">Shims of the trial pack.</param>
/// <param name="Task">All inputs of the calculation.</param>
internal sealed record ShimQuestion(string? About, IReadOnlyList<Length> TrialShims, ShimTask Task)
{
    /// <summary>The default tolerance ±t of one shim (common practice, no source).</summary>
    public static Length UsualTolerance { get; } = Length.FromMillimeters(0.005);

    /// <summary>The stock with the shims of the trial pack returned to it.</summary>
    public static IReadOnlyList<ShimStock> WithTrial(IEnumerable<(Length Thickness, int Count)> shelf, IEnumerable<Length> trial, Length tolerance) =>
    [
        .. shelf.Concat(trial.Select(t => (Thickness: t, Count: 1)))
            .GroupBy(s => Math.Round(s.Thickness.Micrometers, 1))
            .Select(g => new ShimStock(g.First().Thickness, g.Sum(s => s.Count), tolerance)),
    ];
}
