using System.Text.Json.Nodes;
using Layshaft.Book.Shapes;
using Layshaft.Engineering.Measurement;
using Layshaft.Engineering.Settings;
using Layshaft.Site.Figures;
using Layshaft.Site.Pages.Shared;
using UnitsNet;

namespace Layshaft.Cli.Bench;

/// <summary>The answer to a question for a shim pack, in words and as data.</summary>
/// <param name="Question">The question.</param>
/// <param name="Plan">What the shims can do.</param>
internal sealed record ShimAnswer(ShimQuestion Question, ShimPlan Plan)
{
    private const int Decimals = 3;

    // With an unknown gauge the shims' tolerances alone would look like the whole uncertainty.
    private bool GaugeIsKnown => Question.Task.Trial.Measured.Number.UncertaintyIsKnown;

    /// <summary>Works it out.</summary>
    public static Parsed<ShimAnswer> Of(ShimQuestion question)
    {
        try
        {
            return Parsed.Good(new ShimAnswer(question, ShimPacks.For(question.Task)));
        }
        catch (ArgumentException e)
        {
            return Parsed.Bad<ShimAnswer>($"These values are not possible: {e.Message.Split(" (Parameter", 2)[0].Split('\n', 2)[0].TrimEnd('.', '\r')}.", "Check thicknesses and units.");
        }
    }

    /// <summary>The answer in lines.</summary>
    public IEnumerable<string> Lines(FigureWriter figures)
    {
        var (task, plan) = (Question.Task, Plan);
        if (Question.About is { } about)
        {
            yield return about;
        }

        yield return $"Trial pack {Pack(Question.TrialShims, figures)}, measured {Value(task.Trial.Measured, figures)}, "
            + $"target {figures.Range(figures.Length(task.Target.Low, Decimals), figures.Length(task.Target.High, Decimals))}.";
        if (!GaugeIsKnown)
        {
            yield return "The gauge's error limit is not known, so no uncertainty is given (write --error-limit).";
        }

        if (plan.IsImpossible)
        {
            yield return "Even without shims, the value stays outside the target. Check the rest of the stack and repeat the trial.";
        }
        else
        {
            yield return $"Required pack: {figures.Length(Length.FromMillimeters(Math.Max(0, plan.From.Millimeters)), Decimals).Number} to {figures.Length(plan.To, Decimals).Text}.";
            yield return string.Empty;
            foreach (var line in PackLines(figures))
            {
                yield return line;
            }
        }

        yield return string.Empty;
        yield return "The maker's manual takes precedence. Measure each shim before fitting it, measure again after the build, and record the values.";
    }

    /// <summary>The answer as data, each value with its unit.</summary>
    public JsonObject Json()
    {
        var task = Question.Task;
        return new JsonObject
        {
            ["about"] = Question.About,
            ["trial_pack"] = JsonFigure.Of(task.Trial.PackThickness),
            ["measured"] = JsonFigure.Of(task.Trial.Measured),
            ["target"] = new JsonObject { ["low"] = JsonFigure.Of(task.Target.Low), ["high"] = JsonFigure.Of(task.Target.High) },
            ["pack_from"] = JsonFigure.Of(Plan.From),
            ["pack_to"] = JsonFigure.Of(Plan.To),
            ["gauge_uncertainty_known"] = GaugeIsKnown,
            ["impossible"] = Plan.IsImpossible,
            ["stock_suffices"] = Plan.StockSuffices,
            ["packs"] = new JsonArray([.. Plan.Packs.Select(JsonOf)]),
            ["purchase"] = Plan.Purchase is { } bought ? JsonOf(bought) : null,
            ["grinding"] = Plan.Grinding is { } ground ? JsonOf(ground) : null,
        };
    }

    private IEnumerable<string> PackLines(FigureWriter figures)
    {
        for (var i = 0; i < Plan.Packs.Count; i++)
        {
            yield return $"{(i == 0 ? "Fit" : "or "),-6}{PackLine(Plan.Packs[i], figures)}";
        }

        if (Plan.StockSuffices)
        {
            yield break;
        }

        yield return "The shims in stock cannot reach the target.";
        if (Plan.Purchase is { } bought)
        {
            var list = bought.Shims.Where(s => s.ToBuy > 0).Select(s => $"{figures.Number(s.ToBuy).Text} of {figures.Length(s.Thickness, Decimals).Text}");
            yield return $"Buy   {string.Join(", ", list)}: {PackLine(bought, figures)}";
        }

        if (Plan.Grinding is { } ground)
        {
            var shim = ground.Shims.First(s => s.GroundTo is not null);
            yield return $"Grind one of {figures.Length(shim.Thickness, Decimals).Text} to {figures.Length(shim.GroundTo!.Value, Decimals).Text}, flat and parallel, only if the maker allows it: {PackLine(ground, figures)}";
        }

        if (Plan is { Purchase: null, Grinding: null })
        {
            yield return "Buy one shim in the required range above.";
        }
    }

    private string PackLine(ShimPack pack, FigureWriter figures)
    {
        var shims = pack.Shims.Select(s => s.Count == 1 ? Shim(s.Thickness, figures) : $"{figures.Number(s.Count).Text} × {Shim(s.Thickness, figures)}");
        var verdict = pack.Conformity switch
        {
            Conformity.Inside => "inside the target",
            Conformity.Outside => "outside the target",
            _ => "too close to the target limit to decide",
        };
        var text = pack.ShimCount == 0 ? "no shim" : string.Join(" + ", shims);
        return $"{text} = {figures.Length(pack.Thickness, Decimals).Text}, gives {(GaugeIsKnown ? $"{Value(pack.Result, figures)}, {verdict}" : Measured.Figure(pack.Result.Value, Decimals, figures).Text)}";
    }

    // A shim that is marked in inches is looked for by that mark.
    private static string Shim(Length thickness, FigureWriter figures) => thickness.Unit is UnitsNet.Units.LengthUnit.Inch or UnitsNet.Units.LengthUnit.Mil
        ? figures.Length(thickness, new Site.Figures.Decimals(Decimals, Measured.DecimalsWritten(thickness).Imperial)).Both
        : figures.Length(thickness, Decimals).Text;

    private static string Pack(IReadOnlyList<Length> shims, FigureWriter figures) => shims.Count == 1
        ? figures.Length(shims[0], Decimals).Text
        : $"{string.Join(" + ", shims.Select(s => figures.Length(s, Decimals).Number))} = {figures.Length(PackThickness.Of(shims), Decimals).Text}";

    private static string Value(MeasuredQuantity measured, FigureWriter figures) => measured.Number.UncertaintyIsKnown
        ? Measured.WithUncertainty(measured, Decimals, figures)
        : $"{Measured.Figure(measured.Value, Decimals, figures).Text} (uncertainty not known)";

    private static JsonNode JsonOf(ShimPack pack) => new JsonObject
    {
        ["shims"] = new JsonArray([.. pack.Shims.Select(s => (JsonNode)new JsonObject
        {
            ["thickness"] = JsonFigure.Of(s.Thickness),
            ["count"] = s.Count,
            ["to_buy"] = s.ToBuy,
            ["ground_to"] = s.GroundTo is { } to ? JsonFigure.Of(to) : null,
        })]),
        ["thickness"] = JsonFigure.Of(pack.Thickness),
        ["result"] = JsonFigure.Of(pack.Result),
        ["conformity"] = pack.Conformity switch
        {
            Conformity.Inside => "inside",
            Conformity.Outside => "outside",
            _ => "too close to call",
        },
    };
}
