using System.Globalization;
using System.Text;
using Layshaft.Book.Records;
using Layshaft.Book.Schemas;
using Layshaft.Book.Values;
using Layshaft.Engineering.Measurement;
using UnitsNet;

namespace Layshaft.Cli.Starting;

/// <summary>
/// The job file of a received unit. Facts of that day are written out; what is measured has empty brackets,
/// ready to be filled in; what is required and not given is left blank, which the reader reports.
/// </summary>
/// <param name="Story">What the last job leaves.</param>
/// <param name="Received">Day it comes in.</param>
/// <param name="Use">Total usage; null for a blank.</param>
/// <param name="Complaint">What the customer says; null for a blank.</param>
/// <param name="Technician">Who has it; null for nobody yet.</param>
internal sealed record JobDraft(UnitStory Story, DateOnly Received, Use? Use, string? Complaint, string? Technician)
{
    private readonly StringBuilder text = new();

    /// <summary>The fields that are left blank.</summary>
    public IEnumerable<string> Blanks => new[] { Use is null ? "use" : null, Complaint is null ? "complaint" : null }.OfType<string>();

    public string Text()
    {
        text.Clear();
        Line(BookSchema.All.Single(s => s.Kind == "job").HeaderLine);
        Head();
        Inside();
        Inspection();
        Settings();
        Differential();
        Lists();
        return text.ToString();
    }

    private void Head()
    {
        var last = Story.Last;
        Line(last is null
            ? $"# {Story.Unit.Serial}: first job"
            : $"# {Story.Unit.Serial}: next job after {last.Number} ({(last.Finished is { } day ? $"finished {YamlWord.Of(day)}" : $"received {YamlWord.Of(last.Received)}")}, {last.Use})");
        Line($"unit: {YamlWord.Of(Story.Unit.Id)}");
        Line($"received: {YamlWord.Of(Received)}");
        Line(Use is { } use ? $"use: {use}" : $"use:          # FILL IN: total usage; it was {last?.Use ?? Story.Unit.UseAtStart} last time");
        Line(Complaint is { } complaint ? $"complaint: {YamlWord.Of(complaint)}" : "complaint:    # FILL IN: the complaint, in the customer's words");
        Line(Technician is { } technician ? $"technician: {YamlWord.Of(technician)}" : $"# technician: {string.Join(" or ", Story.Shop.Technicians.Select(t => t.Id))}");
        if (last?.NextEvent is { } raced)
        {
            Line("# The event it was geared for. Uncomment this if it was the last event.");
            Line($"# last_event: {{ venue: {raced.Venue}{(raced.On is { } on ? $", on: {YamlWord.Of(on)}" : "")}, laps: {raced.Laps.ToString(CultureInfo.InvariantCulture)}{Gears(", ")} }}");
        }
    }

    private string Gears(string before) =>
        $"{(Story.Teeth.DropPair is { } pair ? $"{before}drop_pair: {pair}" : "")}{(Story.Teeth.FinalDrive is { } final ? $"{before}final_drive: {final}" : "")}";

    private void Inside()
    {
        var changed = Story.Teeth.Ratios is { } now && Story.Gearbox.RatioSetOf(Story.Unit.RatioSet) is { } set && !now.Gears.SequenceEqual(set.Gears) ? $" with gears [{string.Join(", ", now.Gears)}]" : "";
        var gears = $"{(Story.Unit.RatioSet is { } ratios ? $", ratio set {ratios}{changed}" : "")}{Gears(", ").Replace("_", " ", StringComparison.Ordinal)}";
        if (gears.Length > 0)
        {
            Line();
            Line($"# Fitted: {gears[2..]}");
        }

        foreach (var (part, (renewal, job)) in Story.Renewed.OrderBy(r => r.Key, StringComparer.Ordinal))
        {
            Line($"#   {part}: {(renewal.Serial is { } serial ? serial + ", " : "")}fitted in job {job.Number} at {job.Use}{(renewal.Use is { } brought ? $", with {brought} of earlier usage" : "")}");
        }

        foreach (var fitted in Story.Unit.Fitted.Where(f => !Story.Renewed.ContainsKey(f.Part) && !Story.MovedOut.ContainsKey(f.Part)))
        {
            Line($"#   {fitted.Part}: {(fitted.Serial is { } serial ? serial + ", " : "")}fitted since {YamlWord.Of(Story.Unit.InService)}");
        }

        foreach (var (part, to) in Story.MovedOut.OrderBy(m => m.Key, StringComparer.Ordinal))
        {
            Line($"#   {part}: {(to is null ? "removed" : $"moved to {to.Serial}")}; write the one you fit under 'renewed'");
        }

        foreach (var due in Story.Due)
        {
            Line($"# Due: {due.Part!.Name}, service life {due.Part.ServiceLife}{(due.At is { } at ? $", reached at a total of {at.Amount.ToString("0.#", CultureInfo.InvariantCulture)}" : "")}");
        }
    }

    private void Inspection()
    {
        Line();
        Line("# Write the readings into the brackets, without a unit: [0.52] or [0.52, 0.53]. Several readings are better than one.");
        Line("# [] means not inspected. In place of the brackets you can write a grade: reuse, watch or renew.");
        Line("inspection:");
        foreach (var part in Story.First)
        {
            var (seen, job) = Story.Seen[part.Id];
            Line($"  # FIRST: {part.Name}, graded '{(seen.Grade == Grade.Renew ? "renew" : "watch")}' in job {job.Number} and not renewed");
            Inspected(part);
        }

        foreach (var part in Story.Others)
        {
            Inspected(part);
        }
    }

    private void Inspected(Part part)
    {
        if (part.Measures is [] or [_])
        {
            Line($"  {part.Id}: []   # {part.Name}{(part.Measures is [var only] ? $", {only.Name}: {Sizes(part, only)}" : "")}");
            return;
        }

        Line($"  {part.Id}:   # {part.Name}");
        foreach (var measure in part.Measures)
        {
            Line($"    {measure.Id}: []   # {measure.Name}: {Sizes(part, measure)}");
        }
    }

    private string Sizes(Part part, Measure measure)
    {
        var before = Story.Seen.TryGetValue(part.Id, out var seen) ? seen.Finding.Finding.Measurements.FirstOrDefault(m => m.Measure == measure.Id) : null;
        var last = before is null ? "" : $"; last time {YamlWord.Of(before.Readings)}";
        var instrument = measure.Instrument is null && before?.Instrument is { } known ? $" with {known}. For its uncertainty, add 'instrument: {known}' to the measure in the gearbox file" : "";
        return $"new {YamlWord.Of(measure.New)}, limit {YamlWord.Of(measure.Limit)}{last}{instrument}";
    }

    private void Settings()
    {
        if (Story.Gearbox.Settings.Count == 0)
        {
            return;
        }

        Line();
        if (Story.Gearbox.Settings.Any(IsFound))
        {
            Line("# Record the shims and values as found before you loosen a nut.");
            Line("settings:");
            foreach (var setting in Story.Gearbox.Settings.Where(IsFound))
            {
                var (before, job) = Story.Set.TryGetValue(setting.Id, out var set) ? (set.Setting, $"job {set.Job.Number}") : (null, "");
                Line($"  - setting: {setting.Id}   # {setting.Name}: target {YamlWord.Of(setting.Target)}");
                if (setting.Shims is not null)
                {
                    Line($"    found_pack: []   # shims removed{(before is { Pack.Count: > 0 } ? $"; {job} fitted [{YamlWord.Of(before.Pack.Cast<IQuantity>())}]" : "")}");
                }

                Line("    found: []");
            }
        }

        Line("# Settings as built.");
        Line("built:");
        foreach (var setting in Story.Gearbox.Settings)
        {
            var last = Story.Set.TryGetValue(setting.Id, out var set) && set.Setting.Built.Count > 0 ? $"; {YamlWord.Of(set.Setting.Built)} as built in job {set.Job.Number}" : "";
            Line($"  {setting.Id}: []   # {setting.Name}: target {YamlWord.Of(setting.Target)}{last}");
        }
    }

    private static bool IsFound(Setting setting) => setting.Kind != SettingKind.Tightening;

    private void Differential()
    {
        if (Story.Gearbox.Differential is not { } plates)
        {
            return;
        }

        var (built, job) = (Story.LastDifferential?.Differential?.Built, Story.LastDifferential?.Number);
        Line();
        Line(built is null
            ? $"# Differential: ramps {string.Join(" or ", plates.Ramps)} (drive/coast). Uncomment this and record it as found."
            : $"# Differential as job {job} left it. Uncomment this after opening it and correct what differs.");
        Line("# differential:");
        Line($"#   found: {{ ramps: {(built?.Ramps ?? plates.Ramps[0])}, plates: {built?.Plates.Text ?? Layshaft.Book.Values.PlateSequence.Example} }}");
    }

    private void Lists()
    {
        if (Story.Gearbox.Strip.Count > 0)
        {
            Line();
            Line("strip_list:");
            Line($"  # Add each step's id to the brackets when it is done. If all are done: 'done: all {Story.Gearbox.Strip.Count}'.");
            foreach (var step in Story.Gearbox.Strip)
            {
                Line($"  #   {step.Id}: {Single(step.Do)}{(step.Caution is { } caution ? $" CAUTION: {Single(caution)}" : "")}");
            }

            Line("  done: []");
        }

        if (Story.Gearbox.Build.Count > 0)
        {
            Line();
            Line($"# When every step of the build list is done: build_list: {{done: all {Story.Gearbox.Build.Count}, signed_by: …, on: …}}");
        }
    }

    private static string Single(string words) => words.ReplaceLineEndings(" ").Trim();

    private void Line(string line = "") => text.Append(line).Append('\n');
}
