using System.Text.Json.Nodes;
using Layshaft.Book.Records;
using Layshaft.Book.Shapes;
using Layshaft.Engineering.Measurement;
using Layshaft.Engineering.Settings;
using Layshaft.Engineering.Settings.Differentials;
using Layshaft.Site.Figures;
using UnitsNet;

namespace Layshaft.Cli.Bench;

/// <summary>Which shims lead to a breakaway torque, from the newest trial in the book.</summary>
/// <param name="About">Setting, unit and job.</param>
/// <param name="Trial">The trial: shims, torque and plates.</param>
/// <param name="Target">The target band.</param>
/// <param name="Shims">What the shims can do.</param>
internal sealed record BreakawayAnswer(string About, BreakawayTrial Trial, (Torque Low, Torque High) Target, BreakawayShims Shims)
{
    /// <summary>The answer; null if the setting is not a breakaway torque with shims.</summary>
    public static Parsed<BreakawayAnswer>? Of(ShopBook book, string unitName, string settingName)
    {
        if (book.Units.Values.FirstOrDefault(u => u.Id == unitName || u.Serial == unitName) is not { } unit
            || book.GearboxOf(unit) is not { } box
            || box.SettingOf(settingName) is not { Kind: Book.Records.SettingKind.Breakaway, Shims: { } stockId } setting
            || box.Shims.FirstOrDefault(s => s.Id == stockId) is not { } stock)
        {
            return null;
        }

        if (setting.Target is not { Low: Torque low, High: Torque high })
        {
            return Parsed.Bad<BreakawayAnswer>($"The target of '{setting.Name}' has one end only, so no pack can be picked for it.", "Write both ends in the gearbox file, such as 60 N·m to 75 N·m.");
        }

        var trials = book.JobsOf(unit.Id).OrderByDescending(j => j.Received).ThenByDescending(j => j.Number, StringComparer.Ordinal)
            .Select(j => (Job: j, Set: j.Settings.FirstOrDefault(s => s.Setting == setting.Id && s.TrialPack.Count > 0 && s.Trial.Count > 0)));
        if (trials.FirstOrDefault(t => t.Set is not null) is not (var job, { } set))
        {
            return Parsed.Bad<BreakawayAnswer>($"No job of {unit.Serial} has a trial of '{setting.Name}'.", "Add 'trial_pack' and 'trial' to the setting in the job.");
        }

        if ((job.Differential?.Built ?? job.Differential?.Found)?.Plates is not { } plates)
        {
            return Parsed.Bad<BreakawayAnswer>($"Job {job.Number} does not record the plates.", "Add 'differential: { built: { ramps: …, plates: … } }' to the job.");
        }

        if (box.Differential?.PackOf(plates) is not { } pack || box.Differential.SpringRate is not { } rate)
        {
            return Parsed.Bad<BreakawayAnswer>($"No pack can be calculated for '{setting.Name}'.", "Add outer_diameter, inner_diameter, friction and spring_rate to 'differential' in the gearbox file, or change the pack step by step.");
        }

        var tolerance = stock.Tolerance ?? ShimQuestion.UsualTolerance;
        var instrument = book.Shop.Instruments.FirstOrDefault(i => i.Id == set.Instrument)?.Figures ?? Engineering.Measurement.Instrument.Unknown;
        var measured = MeasuredQuantity.From(set.Trial, instrument);
        var build = new TrialBuild(PackThickness.Of(set.TrialPack), PackThickness.StandardUncertainty(set.TrialPack.Count, tolerance), measured);
        return Parsed.Good(new BreakawayAnswer(
            $"{setting.Name}, {unit.Serial}, job {job.Number}",
            new BreakawayTrial(set.TrialPack, measured, plates.Text, pack, box.Differential.SpringRate.Value),
            (low, high),
            BreakawayShims.For(
                pack, rate, build, low, high,
                setting.Sense == ShimSense.MoreShimLess ? ShimEffect.Reduces : ShimEffect.Increases,
                ShimQuestion.WithTrial(stock.Stock.Select(s => (s.Thickness, s.Count)), set.TrialPack, tolerance))));
    }

    // With an unknown gauge the change alone would look like the whole uncertainty.
    private bool GaugeIsKnown => Trial.Measured.Number.UncertaintyIsKnown;

    /// <summary>The answer in lines.</summary>
    public IEnumerable<string> Lines(FigureWriter figures)
    {
        yield return About;
        yield return $"Plates {Trial.Plates}: {figures.Number(Trial.Pack.Faces).Text} friction faces, mean radius {figures.Length(Trial.Pack.MeanRadius, 1).Text}, friction {figures.Number(Trial.Pack.Friction, 2).Text}.";
        yield return $"Trial: shims {figures.Length(PackThickness.Of(Trial.Shims), 2).Text}, breakaway {Site.Pages.Shared.Measured.WithUncertainty(Trial.Measured, 0, figures)}, target {figures.Range(figures.Torque(Target.Low), figures.Torque(Target.High))}.";
        yield return $"By plates and spring rate, 0.10 mm of shim changes the breakaway by {figures.Torque(Shims.PerTenth, 1).Text}.";
        if (!GaugeIsKnown)
        {
            yield return "The wrench's error limit is not known, so no uncertainty is given (write 'instrument' in the job's setting).";
        }

        yield return string.Empty;
        if (Shims.Packs.Count == 0)
        {
            yield return Shims.Plan.IsImpossible
                ? "Even without shims, the torque stays above the target. Check the plates and repeat the trial."
                : $"The shims in stock cannot reach the target. Required pack: {figures.Length(Shims.Plan.From, 2).Number} to {figures.Length(Shims.Plan.To, 2).Text}.";
        }

        for (var i = 0; i < Shims.Packs.Count; i++)
        {
            yield return $"{(i == 0 ? "Fit" : "or "),-6}{PackLine(Shims.Packs[i], figures)}";
        }

        yield return string.Empty;
        yield return "The spring is under load: clamp the case by the maker's procedure and keep clear of it while you undo it.";
        yield return "Friction and spring rate vary by about a fifth. Fit the pack, turn the plates in, measure again and record the value.";
        yield return "The maker's manual takes precedence.";
    }

    /// <summary>The answer as data, each value with its unit.</summary>
    public JsonObject Json() => new()
    {
        ["about"] = About,
        ["plates"] = Trial.Plates,
        ["faces"] = Trial.Pack.Faces,
        ["trial_pack"] = JsonFigure.Of(PackThickness.Of(Trial.Shims)),
        ["target"] = new JsonObject { ["low"] = TorqueOf(Target.Low), ["high"] = TorqueOf(Target.High) },
        ["gauge_uncertainty_known"] = GaugeIsKnown,
        ["change_per_tenth_millimetre"] = TorqueOf(Shims.PerTenth),
        ["packs"] = new JsonArray([.. Shims.Packs.Select(p => (JsonNode)new JsonObject
        {
            ["thickness"] = JsonFigure.Of(p.Pack.Thickness),
            ["shims"] = new JsonArray([.. p.Pack.Shims.Select(s => (JsonNode)new JsonObject { ["thickness"] = JsonFigure.Of(s.Thickness), ["count"] = s.Count })]),
            ["expected"] = TorqueOf(p.Expected),
            ["expanded_uncertainty"] = GaugeIsKnown ? TorqueOf(p.Uncertainty) : null,
            ["conformity"] = !GaugeIsKnown ? null : p.Conformity switch { Conformity.Inside => "inside", Conformity.Outside => "outside", _ => "too close to call" },
        })]),
    };

    private static JsonObject TorqueOf(Torque torque) => new() { ["value"] = Math.Round(torque.NewtonMeters, 2, MidpointRounding.AwayFromZero), ["unit"] = "N·m" };

    private string PackLine(BreakawayPack pack, FigureWriter figures)
    {
        var shims = pack.Pack.Shims.Select(s => s.Count == 1 ? figures.Length(s.Thickness, 2).Text : $"{figures.Number(s.Count).Text} × {figures.Length(s.Thickness, 2).Text}");
        var verdict = pack.Conformity switch
        {
            Conformity.Inside => "inside the target",
            Conformity.Outside => "outside the target",
            _ => "too close to the target limit to decide",
        };
        var torque = GaugeIsKnown ? $"{FigureWriter.PlusMinus(figures.Torque(pack.Expected), figures.Torque(pack.Uncertainty))}, {verdict}" : $"about {figures.Torque(pack.Expected).Text}";
        return $"{(pack.Pack.ShimCount == 0 ? "no shim" : string.Join(" + ", shims))} = {figures.Length(pack.Pack.Thickness, 2).Text}, gives {torque}";
    }
}

/// <summary>A trial of a breakaway torque.</summary>
/// <param name="Shims">Shims of the trial pack.</param>
/// <param name="Measured">Breakaway torque with them.</param>
/// <param name="Plates">Order of the plates.</param>
/// <param name="Pack">The plates as a pack.</param>
/// <param name="SpringRate">Rate of the preload spring.</param>
internal sealed record BreakawayTrial(IReadOnlyList<Length> Shims, MeasuredQuantity Measured, string Plates, PlatePack Pack, ForcePerLength SpringRate);
