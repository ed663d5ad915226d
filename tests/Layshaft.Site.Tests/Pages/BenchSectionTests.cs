using System.Text;
using System.Text.RegularExpressions;
using Layshaft.Book.Reading;
using Layshaft.Site.Assessment;
using Layshaft.Site.Charts.Stack;
using Layshaft.Site.Figures;
using Layshaft.Site.Pages;
using Layshaft.Site.Pages.Report;
using Layshaft.Site.Pages.Shared;
using Layshaft.Site.Templates;
using Layshaft.Site.Wording;

namespace Layshaft.Site.Tests.Pages;

/// <summary>The bench as a report shows it: measured, judged, set.</summary>
public class BenchSectionTests
{
    private const string Box = """
        name: Box
        ratio_sets: [{id: road, name: Road, gears: [34/14, 29/19]}]
        drop_gears: {cut: {module: 2.5 mm, centre_distance: 66.25 mm}, pairs: [29/24, 25/28]}
        main_gears: {module: 3 mm, centre_distance: 72 mm}
        final_drives: [41/11]
        parts:
          - {id: lay-1, name: First on the layshaft, kind: gear, gear: 1, shaft: lay, along: 30 mm, width: 16 mm}
          - {id: main-1, name: First on the main shaft, kind: gear, gear: 1, shaft: main, along: 30 mm, width: 16 mm}
          - id: ring
            name: Dog ring
            kind: dog ring
            gear: 1
            shaft: main
            along: 50 mm
            width: 14 mm
            measures: [{id: corner, name: Corner radius, new: 0.3 mm, limit: 1.3 mm}]
          - id: lay-2
            name: Second on the layshaft
            kind: gear
            gear: 2
            shaft: lay
            along: 70 mm
            width: 16 mm
            measures: [{id: span, name: Span over 3 teeth, new: 22.800 mm, limit: 22.700 mm, span: 3}]
          - {id: main-2, name: Second on the main shaft, kind: gear, gear: 2, shaft: main, along: 70 mm, width: 16 mm}
          - {id: drop-a, name: Drop gear driving, kind: drop gear, shaft: input, along: 120 mm, width: 18 mm}
          - {id: drop-b, name: Drop gear driven, kind: drop gear, shaft: lay, along: 120 mm, width: 18 mm}
          - {id: fork, name: Fork, kind: selector}
        shims: [{id: lay-shims, name: Shims, stock: [{thickness: 0.10 mm, count: 6}]}]
        settings:
          - {id: lay-float, name: Layshaft end float, kind: end float, target: 0.05 mm to 0.10 mm, shims: lay-shims, condition: Box cold}
          - {id: main-float, name: Main shaft end float, kind: end float, target: 0.05 mm to 0.10 mm}
          - {id: nut, name: Nut, kind: tightening torque, target: 170 N·m to 180 N·m}
          - {id: run-out, name: Run-out, kind: run-out, target: at most 0.04 mm, required: no}
        """;

    private const string Job = """
        unit: u1
        received: 2026-03-02
        use: 10 h
        complaint: Slow.
        verdict: Sound.
        finished: 2026-03-10
        drop_pair: 25/28
        findings:
          - {part: fork, grade: reuse}
          - {part: lay-2, measurements: [{measure: span, instrument: gauge, readings: [22.750 mm]}]}
          - {part: ring, measurements: [{measure: corner, readings: [1.4 mm]}]}
        settings:
          - {setting: lay-float, found_pack: [0.50 mm, 0.10 mm], found: [0.160 mm], pack: [0.50 mm, 0.12 mm, 0.10 mm], built: [0.075 mm], instrument: gauge}
          - {setting: main-float, built: [0.099 mm], instrument: gauge}
        """;

    private static ReportContext Report(string box = Box, string job = Job)
    {
        var files = new Dictionary<string, string>
        {
            ["shop.yaml"] = """
                name: Shop
                email: bench@example.com
                telephone: "1"
                address: [Yard]
                currency: EUR
                labour_rate: 60.00
                technicians: [{id: jo, name: Jo}]
                instruments: [{id: gauge, name: Gauge, resolution: 0.001 mm, error_limit: 0.004 mm, calibrated: 2026-01-10}, {id: wrench, name: Wrench, resolution: 1 N·m, class: 4 %, calibrated: 2026-01-10}, {id: old-wrench, name: Old wrench, resolution: 1 N·m, error_limit: 7 N·m, calibrated: 2026-01-10}]
                """,
            ["gearboxes/box.yaml"] = box,
            ["customers/c.yaml"] = "name: Cust\nemail: c@example.com\n",
            ["units/u1.yaml"] = "gearbox: box\nserial: U1\nratio_set: road\nowners: [{customer: c, from: 2025-01-01}]\nin_service: 2025-02-01\nuse_at_start: 0 h\ndrop_pair: 29/24\nfinal_drive: 41/11\n",
            ["jobs/2026/0001/job.yaml"] = job,
        };
        var book = new MemoryBookFiles(files.ToDictionary(f => f.Key, f => Encoding.UTF8.GetBytes(f.Value)));
        var read = BookReader.Read(book);
        Assert.True(read.Book is not null, string.Join("\n", read.Problems));
        var texts = TextsLoader.Load(TemplateFolders.BesideProgram()).Texts!;
        var composition = new Composition(
            BookAssessment.Of(read.Book!, book), texts, new FigureWriter(UnitChoice.Metric, texts), new Addresses(_ => "key"), new PictureIndex(new Dictionary<string, UsablePicture>()), new Dictionary<string, string>());
        var view = OwnerView.Of(composition.Book, composition.Book.Units["u1"]).Single();
        return new ReportContext(composition, view, composition.Assessment.Jobs["0001"]);
    }

    private static T Model<T>(SectionView? section) => Assert.IsType<T>(section!.Model);

    private static string Plain(string text) => text.Replace('\u202F', ' ').Replace('\u00A0', ' ');

    private static Evidence Only(FindingView finding) => finding.Evidence ?? finding.More.Single();

    private static FindingsSection Findings(ReportContext report) => Model<FindingsSection>(FindingsSection.Compose(report));

    private static FindingView Finding(ReportContext report, string part) => Findings(report) is var all ? all.Findings.Concat(all.Sound).Single(f => f.Part == part) : null!;

    [Fact]
    public void Findings_are_worst_first_and_sound_parts_are_folded_away_and_named()
    {
        var findings = Findings(Report());

        Assert.Equal("Dog ring", findings.Findings[0].Part);
        Assert.Single(findings.Findings);
        Assert.Equal(["Fork", "Second on the layshaft"], findings.Sound.Select(f => f.Part).Order());
        Assert.Equal("2 serviceable parts", findings.SoundHeading);
        Assert.Equal(findings.SoundNames.Split(", "), findings.Sound.Select(f => f.Part));
        Assert.Equal(["110 %", "50 %"], new[] { findings.Findings[0], Finding(Report(), "Second on the layshaft") }.Select(f => Plain(Only(f).Share)));
        Assert.NotNull(findings.Key);
    }

    [Fact]
    public void A_measure_without_an_instrument_says_that_its_uncertainty_is_not_known()
    {
        var (ring, gear) = (Only(Finding(Report(), "Dog ring")), Only(Finding(Report(), "Second on the layshaft")));

        Assert.Contains("uncertainty unknown", ring.Remarks);
        Assert.DoesNotContain("±", ring.Value, StringComparison.Ordinal);
        Assert.DoesNotContain("uncertainty unknown", gear.Remarks);
        Assert.Contains("±", gear.Value, StringComparison.Ordinal);
    }

    [Fact]
    public void A_span_is_told_as_tooth_thickness_lost()
    {
        // 0.05 mm of span over cos 20° is 0.053 mm of tooth.
        Assert.Contains(
            Only(Finding(Report(), "Second on the layshaft")).Remarks,
            line => Plain(line).StartsWith("Tooth thickness at the pitch circle is down by 0.053 ± 0.005 mm", StringComparison.Ordinal));
    }

    [Theory]
    [InlineData("", "", true)]
    [InlineData("renewed: [{part: ring}]\n", "", false)]
    [InlineData("", "estimate: {sent: 2026-03-05, lines: [{part: ring, price: 90.00, need: should, if_left: It jumps out.}, {work: Strip, hours: 2, need: must}]}\ngo_ahead: {answer: must only, on: 2026-03-06}\n", false)]
    public void What_a_part_does_if_left_is_said_while_it_matters_and_once(string renewed, string offered, bool said)
    {
        var job = Job.Replace("finished: 2026-03-10\n", "finished: 2026-03-10\n" + renewed + offered, StringComparison.Ordinal);
        job = job.Replace("{part: ring, measurements", "{part: ring, if_left: It jumps out., measurements", StringComparison.Ordinal);
        Assert.Contains("if_left", job, StringComparison.Ordinal);

        Assert.Equal(said, Finding(Report(job: job), "Dog ring").IfLeft is not null);
    }

    [Fact]
    public void The_drawing_has_the_unit_s_teeth_at_their_centre_distances()
    {
        var picture = StackPicture.Of(Report())!;

        int? Teeth(string shaft, double middle) => picture.Parts.Single(p => p.ShaftId == shaft && p.Middle == middle).Teeth;
        Assert.Equal((14, 34, 19, 29), (Teeth("lay", 30), Teeth("main", 30), Teeth("lay", 70), Teeth("main", 70)));

        // The pair that this job fitted, 25/28, not the one that the unit came with.
        Assert.Equal((28, 25), (Teeth("input", 120), Teeth("lay", 120)));
        var height = picture.Shafts.ToDictionary(s => s.Id, s => s.Height);
        Assert.Equal(72, height["main"] - height["lay"], 5e-10);
        Assert.Equal(66.25, height["lay"] - height["input"], 5e-10);
        Assert.Equal("1·2", picture.Parts.Single(p => p.Kind == StackPartKind.DogRing).Note!.Label);
    }

    [Fact]
    public void Each_mark_of_the_drawing_names_its_part_and_leads_to_its_finding()
    {
        var report = Report();
        var marks = StackPicture.Of(report)!.Parts.Select(p => p.Note).Where(n => n?.Grade is not null).ToList();

        Assert.Equal(["Second on the layshaft: Serviceable", "Dog ring: Renew"], marks.Select(m => m!.AccessibleName).OrderDescending());
        Assert.All(marks, m => Assert.Matches("^#finding-[0-9]+$", m!.Link!));
        var list = Model<StackSection>(StackSection.Compose(report)).Parts;
        Assert.Equal(["Dog ring", "Fork", "Second on the layshaft"], list.Select(p => p.Name).Order());
    }

    [Fact]
    public void Without_places_there_is_no_drawing()
    {
        Assert.Null(StackSection.Compose(Report(Regex.Replace(Box, "along: [0-9]+ mm(, )?", string.Empty))));
        Assert.Null(StackSection.Compose(Report(Box.Replace("main_gears: {module: 3 mm, centre_distance: 72 mm}\n", string.Empty, StringComparison.Ordinal))));
    }

    [Fact]
    public void Settings_say_inside_outside_or_too_close_with_their_packs()
    {
        var rows = Model<SettingsSection>(SettingsSection.Compose(Report())).Rows;

        Assert.Equal(["Layshaft end float", "Main shaft end float"], rows.Select(r => r.Name));
        Assert.Equal(("outside target", "within target", "too close to call"), (rows[0].Found.Verdict, rows[0].Built.Verdict, rows[1].Built.Verdict));
        Assert.True(rows[0].Found.IsOutside);
        Assert.Equal("Shims 0.50 + 0.12 + 0.10 = 0.72 mm", Plain(rows[0].Built.Pack!));
        Assert.Equal("0.05 to 0.10 mm", Plain(rows[0].Target));
        Assert.Equal("not recorded", rows[1].Found.Value);
    }

    [Theory]
    [InlineData("175 N·m", "wrench", "set to 175 N·m, wrench class ±4 %", "within target")]
    [InlineData("182 N·m", "wrench", "set to 182 N·m, wrench class ±4 %", "outside target")]
    [InlineData("175 N·m", "old-wrench", "set to 175 N·m, wrench error limit ±7 N·m", "within target")]
    public void A_set_torque_is_compared_with_its_target_and_printed_with_the_class_of_the_wrench(string built, string wrench, string value, string verdict)
    {
        var job = Job + $"\n  - {{setting: nut, built: [{built}], instrument: {wrench}}}\n";
        var section = Model<SettingsSection>(SettingsSection.Compose(Report(job: job)));
        var nut = section.Rows.Single(r => r.Name == "Nut");

        Assert.Equal((value, verdict), (Plain(nut.Built.Value), Plain(nut.Built.Verdict!)));
        Assert.DoesNotContain(section.Notes, n => n.StartsWith("Nut:", StringComparison.Ordinal));
    }

    // 22.702 mm is 2 µm from the limit, the uncertainty is 5 µm.
    [Theory]
    [InlineData("finished: 2026-03-10\n", "", "The technician refitted it.")]
    [InlineData("finished: 2026-03-10\n", "renewed: [{part: lay-2}]\n", "We renewed it.")]
    [InlineData("", "", "We will measure again or renew it.")]
    public void A_reading_too_close_to_call_says_what_was_done_or_will_be(string finished, string renewed, string said)
    {
        var job = Job.Replace("22.750", "22.702", StringComparison.Ordinal).Replace("finished: 2026-03-10\n", finished + renewed, StringComparison.Ordinal);
        var remarks = Only(Finding(Report(job: job), "Second on the layshaft")).Remarks;

        Assert.Contains(remarks, l => l.Contains("which side of the limit", StringComparison.Ordinal));
        Assert.Contains(said, remarks);

        // A decision that was written down says it already.
        var decided = job.Replace("{part: lay-2, measurements", "{part: lay-2, action: renew, measurements", StringComparison.Ordinal);
        Assert.Contains("action: renew", decided, StringComparison.Ordinal);
        Assert.DoesNotContain(said, Only(Finding(Report(job: decided), "Second on the layshaft")).Remarks);
    }

    [Fact]
    public void A_setting_that_the_list_asks_for_and_the_job_lacks_is_listed_as_missing()
    {
        var settings = Model<SettingsSection>(SettingsSection.Compose(Report()));

        Assert.Equal(["Nut (target 170 to 180 N·m)"], settings.Missing.Select(Plain));
        Assert.NotNull(settings.MissingHeading);
        Assert.Contains(settings.Notes, n => n.StartsWith("Main shaft end float:", StringComparison.Ordinal));
    }
}
