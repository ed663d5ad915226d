using Layshaft.Book.Shapes;
using Layshaft.Book.Values;
using Layshaft.Engineering.Measurement;
using Layshaft.Engineering.Settings;
using UnitsNet;

namespace Layshaft.Cli.Bench;

/// <summary>Figures for a shim pack as they were typed.</summary>
/// <param name="TrialPack">Shims of the trial pack.</param>
/// <param name="Measured">One reading or several.</param>
/// <param name="Target">The band.</param>
/// <param name="Stock">Thicknesses with counts.</param>
/// <param name="MoreShim">smaller or larger.</param>
/// <param name="Tolerance">±t of one shim; null for the usual.</param>
/// <param name="ErrorLimit">Limit of error of the gauge; null where it is not known.</param>
internal sealed record ShimFigures(
    string? TrialPack, string? Measured, string? Target, string? Stock, string? MoreShim, string? Tolerance, string? ErrorLimit)
{
    // No shim pack and no float is thicker.
    private const double MostMm = 20;

    /// <summary>Reads them.</summary>
    public Parsed<ShimQuestion> Read()
    {
        var trial = Lengths.List(TrialPack, "--trial-pack", "0.50 mm, 0.10 mm", MostMm);
        var measured = Lengths.List(Measured, "--measured", "0.16 mm", MostMm);
        var stock = StockOf();
        var target = TargetOf();
        var tolerance = Tolerance is null ? Parsed.Good(ShimQuestion.UsualTolerance) : Lengths.One(Tolerance, "--tolerance");
        var limit = ErrorLimit is null ? Parsed.Good(Length.Zero) : Lengths.One(ErrorLimit, "--error-limit");
        var effect = EffectOf();
        string?[] wrongs = [trial.Wrong, measured.Wrong, target.Wrong, stock.Wrong, tolerance.Wrong, limit.Wrong, effect.Wrong];
        string?[] remedies = [trial.Remedy, measured.Remedy, target.Remedy, stock.Remedy, tolerance.Remedy, limit.Remedy, effect.Remedy];
        if (Array.FindIndex(wrongs, w => w is not null) is >= 0 and var i)
        {
            return Parsed.Bad<ShimQuestion>(wrongs[i]!, remedies[i]);
        }

        var instrument = limit.Value > Length.Zero ? new Instrument { ErrorLimit = limit.Value } : Instrument.Unknown;
        return Parsed.Good(new ShimQuestion(
            null,
            trial.Value!,
            new ShimTask(
                new TrialBuild(
                    PackThickness.Of(trial.Value!),
                    PackThickness.StandardUncertainty(trial.Value!.Count, tolerance.Value),
                    MeasuredQuantity.From(measured.Value!, instrument)),
                target.Value!,
                effect.Value,
                ShimQuestion.WithTrial(stock.Value!, trial.Value!, tolerance.Value))));
    }

    private Parsed<ShimEffect> EffectOf() => MoreShim switch
    {
        null or "smaller" => Parsed.Good(ShimEffect.Reduces),
        "larger" => Parsed.Good(ShimEffect.Increases),
        _ => Parsed.Bad<ShimEffect>($"--more-shim: '{MoreShim}' is not 'smaller' or 'larger'.", "Write 'smaller' if adding shim makes the reading smaller, or 'larger'."),
    };

    private Parsed<TargetBand> TargetOf()
    {
        if (Target is null)
        {
            return Parsed.Bad<TargetBand>("--target is missing.", "Write --target \"0.05 to 0.10 mm\".");
        }

        var band = BandText.Parse(Target);
        return band.Wrong is { } wrong ? Parsed.Bad<TargetBand>($"--target: {wrong}", band.Remedy) : Bands.Of(band.Value!, "--target");
    }

    private Parsed<IReadOnlyList<(Length Thickness, int Count)>> StockOf()
    {
        var found = new List<(Length, int)>();
        foreach (var item in (Stock ?? string.Empty).Split(',', StringSplitOptions.RemoveEmptyEntries | StringSplitOptions.TrimEntries))
        {
            var parts = item.Replace('×', 'x').Split(" x ", StringSplitOptions.TrimEntries);
            var length = Lengths.One(parts[0], "--stock");
            var count = parts.Length == 2 ? Figure.ParseWhole(parts[1]) : Parsed.Bad<int>($"'{item}' has no count.", "Write thickness and count, such as 0.10 mm x 6.");
            if ((length.Wrong ?? count.Wrong) is { } wrong)
            {
                return Parsed.Bad<IReadOnlyList<(Length, int)>>(length.Wrong ?? $"--stock: {wrong}", length.Wrong is null ? count.Remedy ?? "Write a count from 0 to 1000." : length.Remedy);
            }

            if (count.Value is < 0 or > 1000)
            {
                return Parsed.Bad<IReadOnlyList<(Length, int)>>($"--stock: '{parts[1]}' is out of range.", "Write a count from 0 to 1000.");
            }

            found.Add((length.Value, count.Value));
        }

        return Parsed.Good<IReadOnlyList<(Length, int)>>(found);
    }
}
