using System.Text;
using Layshaft.Book.Problems;
using Layshaft.Book.Reading;

namespace Layshaft.Book.Tests;

/// <summary>A plate differential as a unit of its own: what it needs, and what contradicts itself.</summary>
public class DifferentialCheckTests
{
    private const string Type = "gearboxes/corrick-pd.yaml";
    private const string Unit = "units/pd-041.yaml";
    private const string Job = "jobs/2026/0623/job.yaml";

    [Fact]
    public void The_differential_of_the_demo_is_without_problems() => Assert.Empty(Problems(Type, t => t));

    [Theory]
    [InlineData("kind: differential\n", "", "missing-field", "'ratio_sets' is missing from a gearbox.")]
    [InlineData("kind: differential\n", "kind: axle\n", "missing-field", "'final_drives' is missing from an axle.")]
    [InlineData("kind: differential\n", "kind: differential\nfinal_drives: [61/14]\n", "wrong-kind-of-unit", "This is a differential, which has no 'final_drives'.")]
    [InlineData("kind: differential\n", "kind: diferential\n", "unknown-word", "'diferential' is not a kind of unit.")]
    [InlineData("inner_diameter: 78 mm", "inner_diameter: 118 mm", "diameters-swapped", "The inner diameter of the friction faces is not below the outer one.")]
    [InlineData("friction: 0.10", "friction: 10", "unlikely-friction", "A coefficient of friction of plates in oil is below 1.")]
    [InlineData("45°/80°, 30°/60°]", "45/80, 30°/60°]", "bad-ramps", "'45/80' has no degree sign.")]
    [InlineData("45°/80°, 30°/60°]", "45°/95°, 30°/60°]", "bad-ramps", "A ramp angle must be from 15° to 90°.")]
    [InlineData("target: 60 N·m to 75 N·m", "target: 60 N to 75 N", "wrong-quantity", "A breakaway torque must be a torque.")]
    [InlineData("new: 1.500 mm, limit: 1.400 mm", "new: 15 N, limit: 14 N", "wrong-quantity", "'Outer plates' is a friction plate, which is measured as a length.")]
    [InlineData("  spring_rate: 3000 N/mm\n", "", "shim-target", "No pack can be calculated for 'Breakaway torque': 'spring_rate' is missing under 'differential'.")]
    public void A_mistake_in_the_type_is_found(string old, string wrong, string code, string message)
    {
        var problems = Problems(Type, t => t.Replace(old, wrong, StringComparison.Ordinal));

        Assert.Contains(problems, p => p.Code == code && p.Message == message && p.Place.File == Type);
        Assert.All(problems, p => Assert.NotEmpty(p.Remedy));
    }

    [Fact]
    public void A_breakaway_torque_needs_friction_plates()
    {
        var problems = Problems(Type, t => t.Replace("kind: friction plate", "kind: case", StringComparison.Ordinal));

        Assert.Contains(problems, p => p.Code == "no-plates" && p.Severity == Severity.Stops);
    }

    [Theory]
    [InlineData("ratio_set: rally\n", "wrong-kind-of-unit", "Corrick PD is a differential, which has no 'ratio_set'.")]
    [InlineData("final_drive: 61/14\n", "wrong-kind-of-unit", "Corrick PD is a differential, which has no 'final_drive'.")]
    public void A_differential_has_no_gears_to_choose(string line, string code, string message) =>
        Assert.Contains(Problems(Unit, t => t + line), p => p.Code == code && p.Message == message);

    [Theory]
    [InlineData("ratio_set: rally\n", "'ratio_set' is missing from a unit.")]
    [InlineData("final_drive: 61/14\n", "'final_drive' is missing from a unit.")]
    public void A_gearbox_still_needs_its_gears(string line, string message) =>
        Assert.Contains(Problems("units/f5-206.yaml", t => t.Replace(line, string.Empty, StringComparison.Ordinal)), p => p.Code == "missing-field" && p.Message == message);

    [Theory]
    [InlineData("found: { ramps: 45°/60°,", "found: { ramps: 40°/60°,", "no-such-ramps", "Corrick PD has no ramps 40°/60°.")]
    [InlineData("built: { ramps: 45°/80°, plates: O-I-O-I-O }", "built: { ramps: 45°/80°, plates: O-O-O }", "no-friction-face", "These plates have no friction face: there is no inner plate.")]
    [InlineData("built: { ramps: 45°/80°, plates: O-I-O-I-O }", "built: { ramps: 45°/80°, plates: OIOIO }", "bad-plates", "'OIOIO' is not an order of plates.")]
    [InlineData("conditions: [weak spring]", "conditions: [rounded dogs]", "wrong-term", "'rounded dogs' is not a damage term for a spring.")]
    [InlineData("conditions: [warped plate]", "conditions: [scuffing]", "wrong-term", "'scuffing' is not a damage term for a friction plate.")]
    public void A_mistake_in_the_job_is_found(string old, string wrong, string code, string message)
    {
        var problems = Problems(Job, t => t.Replace(old, wrong, StringComparison.Ordinal));

        Assert.Contains(problems, p => p.Code == code && p.Message == message && p.Place.File == Job && p.Severity == Severity.Stops);
        Assert.All(problems, p => Assert.NotEmpty(p.Remedy));
    }

    [Fact]
    public void A_trace_belongs_to_the_job_of_a_gearbox() => Assert.Contains(
        Problems(Job, t => t + "trace: { file: trace.csv }\n"),
        p => p.Code == "wrong-kind-of-unit" && p.Message == "Corrick PD is a differential; a trace shows the gears of a gearbox." && p.Severity == Severity.Stops);

    [Theory]
    [InlineData("  built: { ramps: 45°/80°, plates: O-I-O-I-O }\n", "", "differential-not-recorded")]
    [InlineData("built: [69 N·m, 70 N·m, 69 N·m]", "built: [90 N·m, 91 N·m, 90 N·m]", "pack-contradicts")]
    [InlineData("pack: [0.50 mm, 0.20 mm, 0.20 mm]", "pack: [0.20 mm, 0.10 mm]", "pack-contradicts")]
    public void What_the_job_must_explain_is_noted(string old, string wrong, string code) => Assert.Contains(
        Problems(Job, t => t.Replace(old, wrong, StringComparison.Ordinal)), p => p.Code == code && p.Severity == Severity.Notice && p.Place.File == Job);

    [Fact]
    public void A_changed_differential_needs_a_reason_for_the_customer()
    {
        var problems = Problems(Job, t => System.Text.RegularExpressions.Regex.Replace(t, "  why: >-\\n(    .*\\n)+", string.Empty));

        Assert.Contains(problems, p => p.Code == "differential-changed" && p.Message.Contains("from 45°/60°, O-I-O-I-O to 45°/80°, O-I-O-I-O", StringComparison.Ordinal));
    }

    [Fact]
    public void A_differential_found_otherwise_than_it_left_is_noted()
    {
        var files = Demo();
        files["jobs/2026/0626/job.yaml"] = Encoding.UTF8.GetBytes("unit: pd-041\nreceived: 2026-09-20\nuse: 1900 km\ncomplaint: It locks too much.\ndifferential: { found: { ramps: 30°/60°, plates: O-I-O-I-O } }\n");

        var note = Assert.Single(BookReader.Read(new MemoryBookFiles(files)).Problems, p => p.Code == "differential-differs");
        Assert.Equal("Job 0623 left the differential as 45°/80°, O-I-O-I-O, but it was found as 30°/60°, O-I-O-I-O.", note.Message);
    }

    [Fact]
    public void A_gearbox_without_a_plate_differential_has_none_in_its_job() => Assert.Contains(
        Problems("jobs/2026/0624/job.yaml", t => t + "differential: { found: { ramps: 45°/60°, plates: O-I-O } }\n"), p => p.Code == "no-differential" && p.Severity == Severity.Stops);

    private static Problem[] Problems(string path, Func<string, string> change)
    {
        var files = Demo();
        files[path] = Encoding.UTF8.GetBytes(change(Encoding.UTF8.GetString(files[path])));
        return [.. BookReader.Read(new MemoryBookFiles(files)).Problems];
    }

    // The two units of the demo that are no dog gearboxes, with what they refer to.
    private static Dictionary<string, byte[]> Demo() => new[]
        {
            "shop.yaml", "customers/morland.yaml", "gearboxes/corrick-pd.yaml", "gearboxes/corrick-f5.yaml", "cars/hatch-61.yaml", Unit, "units/f5-206.yaml", Job, "jobs/2026/0624/job.yaml", "logo.png",
        }
        .ToDictionary(p => p, p => File.ReadAllBytes(Path.Combine(OwnBooks.Folder("demo-data"), p)), StringComparer.Ordinal);
}
