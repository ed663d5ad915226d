using System.Text;
using Layshaft.Book.Problems;
using Layshaft.Book.Reading;

namespace Layshaft.Book.Tests;

/// <summary>Pairs of gears that can be changed one by one: on the shelf, in an owner's kit, and in a unit.</summary>
public class GearChoiceTests
{
    private const string Kit = "kit: { gear_pairs: [ { gear: 3, pairs: [27/21] } ], drop_pairs: [28/25], final_drives: [39/11] }";

    [Theory]
    [InlineData("gear_pairs: [ { gear: 5, pairs: [25/23] } ]", "no-such-gear", "Write a gear from 1 to 4.")]
    [InlineData("gear_pairs: [ { gear: 4, pairs: [25/23] }, { gear: 4, pairs: [23/25] } ]", "gear-twice", "Write them in one list.")]
    [InlineData("gear_pairs: [ { gear: 4, pairs: [35/23] } ]", "does-not-mesh", "Check the tooth counts")]
    [InlineData("gear_pairs: [ { gear: 4, pairs: [] } ]", null, "")]
    [InlineData("change_times: { gear_pair: 2.5 }", null, "")]
    [InlineData("change_times: { box_out: [gears] }", null, "")]
    public void A_mistake_in_a_gearbox_is_a_problem(string line, string? code, string remedy)
    {
        var found = Books.SmallWith("gearboxes/four-speed.yaml", g => g.Replace("main_gears:", line + "\nmain_gears:", StringComparison.Ordinal)).Problems;
        Assert.Contains(found, p => p.Severity == Severity.Stops && (code is null || p.Code == code) && p.Remedy.Contains(remedy, StringComparison.Ordinal));
    }

    [Theory]
    [InlineData("drop_pairs: [35/24]", "does-not-mesh")]
    [InlineData("gear_pairs: [ { gear: 7, pairs: [25/23] } ]", "no-such-gear")]
    [InlineData("final_drives: [11/41]", "bad-teeth")]
    public void A_mistake_in_a_kit_is_a_problem(string line, string code) => Assert.Contains(
        Books.SmallWith("units/0001.yaml", u => u.Replace("from: 2025-01-01}", $"from: 2025-01-01, kit: {{ {line} }}}}", StringComparison.Ordinal)).Problems, p => p.Code == code);

    [Theory]
    [InlineData("gears: [33/15, 29/19, 27/21, 24/24]\ndrop_pair: 28/25\nfinal_drive: 39/11", null)]
    [InlineData("gears: [33/15, 29/19, 26/22]", "wrong-number-of-gears")]
    [InlineData("gears: [33/15, 26/22, 29/19, 24/24]", "gears-out-of-order")]
    [InlineData("gears: [33/15, 29/19, 25/22, 24/24]", "no-such-pair")]
    public void A_job_leaves_gears_that_the_gearbox_or_the_owner_has(string lines, string? code)
    {
        var files = Books.SmallFiles();
        Change("units/0001.yaml", u => u.Replace("from: 2025-01-01}", $"from: 2025-01-01, {Kit}}}", StringComparison.Ordinal));
        Change("jobs/2026/0001/job.yaml", j => j + "\n" + lines + "\n");
        var book = BookReader.Read(new MemoryBookFiles(files));
        var found = book.Problems.Where(p => p.Severity == Severity.Stops).Select(p => p.Code).Distinct();
        Assert.Equal(code is null, !found.Any());
        Assert.True(code is null || found.Contains(code));

        void Change(string path, Func<string, string> change) => files[path] = Encoding.UTF8.GetBytes(change(Encoding.UTF8.GetString(files[path])));
    }
}
