using System.Globalization;
using Layshaft.Book.Checks;
using Layshaft.Book.Places;
using Layshaft.Book.Problems;
using Layshaft.Book.Records;
using Layshaft.Book.Values;
using Layshaft.Cli.Starting;
using UnitsNet;

namespace Layshaft.Cli.Entering;

/// <summary>One value that is asked for at the bench.</summary>
/// <param name="Keys">Where it goes in the job: the field, then the names below it.</param>
/// <param name="Before">Names below the field that come before it, nearest first.</param>
/// <param name="Heading">What the value belongs to.</param>
/// <param name="Words">What to measure, with the sizes that matter.</param>
/// <param name="Model">A quantity in its unit; null if a grade is asked for.</param>
/// <param name="Judge">What readings mean: lines to show, and whether they can be right.</param>
internal sealed record Question(string[] Keys, IReadOnlyList<string> Before, string Heading, string Words, IQuantity? Model, Func<IReadOnlyList<IQuantity>, (IReadOnlyList<string> Lines, bool CanBe)> Judge)
{
    /// <summary>Everything to ask for a gearbox, in the order of its file.</summary>
    /// <param name="box">The gearbox.</param>
    /// <param name="shop">The shop, for its instruments.</param>
    /// <param name="last">The readings of the unit's jobs before, of parts that are still in it.</param>
    public static IReadOnlyList<Question> Of(Gearbox box, Shop shop, LastReadings last)
    {
        var questions = new List<Question>();
        for (var i = 0; i < box.Parts.Count; i++)
        {
            var part = box.Parts[i];
            string[] before = [.. box.Parts.Take(i).Reverse().Select(p => p.Id)];
            var heading = $"{part.Id}: {part.Name}";
            if (part.Measures.Count == 0)
            {
                questions.Add(new Question(["inspection", part.Id], before, heading, "grade: reuse, watch or renew", null, _ => ([], true)));
            }

            foreach (var measure in part.Measures)
            {
                var earlier = last.Of(part.Id, measure.Id);
                questions.Add(new Question(
                    part.Measures.Count == 1 ? ["inspection", part.Id] : ["inspection", part.Id, measure.Id],
                    before,
                    heading,
                    $"{measure.Name}: new {YamlWord.Of(measure.New)}, limit {YamlWord.Of(measure.Limit)}{(earlier.Count > 0 ? $", last time {YamlWord.Of(earlier)}" : "")}{(shop.InstrumentOf(measure.Instrument) is { } with ? $" ({with.Name})" : "")}",
                    measure.New,
                    readings => OfMeasure(measure, part, shop, earlier, readings)));
            }
        }

        for (var i = 0; i < box.Settings.Count; i++)
        {
            var setting = box.Settings[i];
            questions.Add(new Question(
                ["built", setting.Id],
                [.. box.Settings.Take(i).Reverse().Select(s => s.Id)],
                $"{setting.Id}: {setting.Name}, as built",
                $"target {YamlWord.Of(setting.Target)}{(setting.Condition is { } condition ? $" ({condition})" : "")}",
                setting.Target.Low ?? setting.Target.High,
                readings => OfSetting(setting, readings)));
        }

        return questions;
    }

    private static (IReadOnlyList<string> Lines, bool CanBe) OfMeasure(Measure measure, Part part, Shop shop, IReadOnlyList<IQuantity> earlier, IReadOnlyList<IQuantity> readings)
    {
        var instrument = shop.InstrumentOf(measure.Instrument);
        if (measure.Judge(readings, instrument, part.Grading) is not { } judged)
        {
            return ([], true);
        }

        var problems = new ProblemList();
        ReadingChecks.Run(shop, problems, measure, new Measurement(Origin.None, measure.Id, measure.Instrument, readings));
        var lines = new List<string> { $"{YamlWord.Of(Rounded(judged.Wear.Measured.Value, readings))}: {judged.Wear.ShareUsed.Value.ToString("0 %", CultureInfo.InvariantCulture)} of the wear allowance used, {judged.Grade.Standing.ToString().ToLowerInvariant()}{(judged.Grade.MeasureAgain ? "; too close to the limit to be sure, measure again" : "")}" };
        lines.AddRange(problems.InOrder().Select(p => $"CHECK: {p.Message} {p.Remedy}".TrimEnd()));
        if (earlier.Count > 0 && measure.Judge(earlier, instrument, part.Grading) is { } before && judged.Wear.ShareUsed.Value < before.Wear.ShareUsed.Value - LessWorn)
        {
            lines.Add($"CHECK: less worn than last time ({YamlWord.Of(earlier)}). Check the part and the reading.");
        }

        return (lines, !problems.HasStops);
    }

    // A mean with one digit more than its readings.
    private static IQuantity Rounded(IQuantity mean, IReadOnlyList<IQuantity> readings)
    {
        var decimals = readings.Max(r => ((decimal)(double)r.Value).Scale) + (readings.Count > 1 ? 1 : 0);
        return readings[0].Of(Math.Round((double)mean.As(readings[0].Unit), Math.Min(decimals, 6)));
    }

    // A part does not get better: beyond this share of the allowance it is another part or a slip (common practice, no source).
    private const double LessWorn = 0.1;

    private static (IReadOnlyList<string> Lines, bool CanBe) OfSetting(Setting setting, IReadOnlyList<IQuantity> values)
    {
        var isInside = values.All(v => (setting.Target.Low is not { } low || v.InSi() >= low.InSi()) && (setting.Target.High is not { } high || v.InSi() <= high.InSi()));
        return ([isInside ? "inside the target" : $"CHECK: outside the target, {YamlWord.Of(setting.Target)}"], true);
    }
}
