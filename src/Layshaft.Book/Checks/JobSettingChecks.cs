using Layshaft.Book.Records;
using Layshaft.Book.Values;

namespace Layshaft.Book.Checks;

internal static class JobSettingChecks
{
    public static void Run(Checker check, Job job, Gearbox box)
    {
        check.Unique(job.Settings, s => s.Setting, "settings of this job", "setting");
        foreach (var setting in job.Settings)
        {
            SettingOf(check, box, setting);
        }

        if (job.Finished is not null)
        {
            foreach (var asked in box.Settings.Where(s => s.Required && !job.Settings.Any(j => j.Setting == s.Id && j.Built.Count > 0)))
            {
                check.Problems.Note("setting-not-recorded", job.Origin.At("settings"), $"'{asked.Name}' was not recorded. The report will state this.");
            }
        }

        Ticks(check, job.StripList, box.Strip, "strip list");
        Ticks(check, job.BuildList, box.Build, "build list");
        if (job.Finished is not null)
        {
            Built(check, job, box);
        }
    }

    // A box that leaves the bench has each step of its build list done and signed for, or left out for a written reason.
    private static void Built(Checker check, Job job, Gearbox box)
    {
        string[] open = [.. box.Build.Select(s => s.Id).Where(s => job.BuildList is not { } ticks || !(ticks.Done.Contains(s) || ticks.LeftOut.Any(l => l.Step == s)))];
        if (open.Length > 0)
        {
            check.Problems.Add(
                "step-not-done",
                job.BuildList?.Origin.At("done") ?? job.Origin.At("finished"),
                $"The job is finished, but these build steps are not done: {string.Join(", ", open)}.",
                "Add each step to 'done' of 'build_list', or to 'left_out' with a reason.");
        }

        if (job.BuildList is { Done.Count: > 0, SignedBy: null } unsigned && box.Build.Count > 0)
        {
            check.Problems.Add("list-not-signed", unsigned.Origin.Place, "Nobody has signed the build list of this finished job.", "Add 'signed_by: …' with the id of the technician.");
        }
    }

    private static void SettingOf(Checker check, Gearbox box, JobSetting setting)
    {
        JobChecks.Technician(check, setting.By, setting.Origin.At("by"));
        if (check.Draft.Shop is { } shop)
        {
            check.Names(setting.Instrument, shop.Instruments.Select(i => i.Id), setting.Origin.At("instrument"), "instrument", "shop.yaml");
        }

        if (!check.Names(setting.Setting, box.Settings.Select(s => s.Id), setting.Origin.At("setting"), "setting", box.Name, box.Origin.Place.File))
        {
            return;
        }

        var asked = box.SettingOf(setting.Setting)!;
        var model = (asked.Target.Low ?? asked.Target.High)!;
        if (check.Draft.Shop?.Instruments.FirstOrDefault(i => i.Id == setting.Instrument) is { } instrument)
        {
            check.Like(instrument.Resolution, model, setting.Origin.At("instrument"), "the target", "The instrument's resolution");
        }

        foreach (var (key, pack) in new[] { ("found_pack", setting.FoundPack), ("trial_pack", setting.TrialPack), ("pack", setting.Pack) })
        {
            if (pack.Any(PackChecks.IsTooThick))
            {
                PackChecks.TooThick(check, setting.Origin.At(key));
            }
        }

        foreach (var (key, values) in new[] { ("found", setting.Found), ("trial", setting.Trial), ("built", setting.Built) })
        {
            foreach (var value in values)
            {
                check.Like(value, model, setting.Origin.At(key), "the target");
            }
        }

        Slip(check, asked, setting);
        ShimChecks.Pack(check, box, asked, setting);
        PackChecks.Run(check, box, asked, setting);
        foreach (var (key, pack) in new[] { ("found_pack", setting.FoundPack), ("trial_pack", setting.TrialPack), ("pack", setting.Pack) })
        {
            if (pack.Count > 0 && asked.Shims is null)
            {
                check.Problems.Add("no-shims-here", setting.Origin.At(key), $"'{asked.Name}' is not set with shims.", "Remove this line, or add 'shims: …' to the setting in the gearbox file.");
            }
        }
    }

    // A value as built that a point in another place or another unit would put into the band.
    private static void Slip(Checker check, Setting asked, JobSetting setting)
    {
        if (asked.Target is not { Low: { } low, High: { } high } || low.InSi() <= 0)
        {
            return;
        }

        var half = (high.InSi() - low.InSi()) / 2;
        foreach (var value in setting.Built.Where(v => v.IsLike(low) && (v.InSi() < low.InSi() / 4 || v.InSi() > high.InSi() * 4)))
        {
            if (Slips.Meant(value, v => v.InSi() >= low.InSi() - half && v.InSi() <= high.InSi() + half) is { } meant)
            {
                check.Problems.Note("unlikely-reading", setting.Origin.At("built"), $"{Slips.Text(value)} is far outside the target of '{asked.Name}'.", meant);
            }
        }
    }

    private static void Ticks(Checker check, ListTicks? ticks, IReadOnlyList<Step> steps, string list)
    {
        if (ticks is null)
        {
            return;
        }

        JobChecks.Technician(check, ticks.SignedBy, ticks.Origin.At("signed_by"));
        foreach (var id in ticks.Done)
        {
            check.Names(id, steps.Select(s => s.Id), ticks.Origin.At("done"), "step", $"The {list}");
        }

        foreach (var left in ticks.LeftOut)
        {
            if (check.Names(left.Step, steps.Select(s => s.Id), left.Origin.At("step"), "step", $"The {list}") && ticks.Done.Contains(left.Step))
            {
                check.Problems.Add("step-done-and-left-out", left.Origin.At("step"), $"Step '{left.Step}' is both done and left out.", "Remove it from 'done' or from 'left_out'.");
            }
        }
    }
}
