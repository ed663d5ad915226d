using CsCheck;
using Layshaft.Book.Problems;
using Layshaft.Book.Reading;

namespace Layshaft.Book.Tests;

public class BookReaderTests
{
    [Fact]
    public void A_reference_to_a_file_that_could_not_be_read_is_not_reported_again()
    {
        var read = Books.SmallWith("gearboxes/four-speed.yaml", t => t + "\nnonsense");

        Assert.Equal("gearboxes/four-speed.yaml", Assert.Single(read.Problems).Place.File);
    }

    [Fact]
    public void Running_that_goes_back_is_reported_at_the_later_job()
    {
        var files = Books.SmallFiles();
        files["jobs/2026/0002/job.yaml"] = "unit: '0001'\nreceived: 2026-06-01\nuse: 12 h\ncomplaint: Oil leak.\n"u8.ToArray();

        var problem = Assert.Single(BookReader.Read(new MemoryBookFiles(files)).Problems);

        Assert.Equal(("use-goes-back", "jobs/2026/0002/job.yaml", 3), (problem.Code, problem.Place.File, problem.Place.Line));
        Assert.Matches(@"\(12 h\) is less than in job 0001 \([0-9.]+ h\)", problem.Message);
    }

    [Fact]
    public void Two_units_of_a_gearbox_with_one_serial_are_worth_a_note_at_the_later_one()
    {
        var files = Books.SmallFiles();
        files["units/0002.yaml"] = files["units/0001.yaml"];

        var problem = Assert.Single(BookReader.Read(new MemoryBookFiles(files)).Problems);

        Assert.Equal(("duplicate-serial", "units/0002.yaml", Severity.Notice), (problem.Code, problem.Place.File, problem.Severity));
        Assert.Contains("'0001'", problem.Message, StringComparison.Ordinal);
    }

    [Fact]
    public void A_file_with_an_unfit_name_is_told_a_fit_one()
    {
        var files = Books.SmallFiles();
        files["customers/Miller & Sons.yaml"] = files["customers/first-customer.yaml"];
        files["customers/jones.yml"] = files["customers/first-customer.yaml"];

        Assert.Equal(
            ["Rename it, for example to 'miller-sons.yaml'.", "Rename it to 'jones.yaml'."],
            BookReader.Read(new MemoryBookFiles(files)).Problems.Select(p => p.Remedy));
    }

    [Fact]
    public void An_instrument_out_of_its_calibration_is_a_note_that_stops_nothing()
    {
        var read = Books.SmallWith("shop.yaml", t => t.Replace("error_limit: 0.02 mm, calibrated: 2026-01-10", "error_limit: 0.02 mm, calibrated: 2024-01-10", StringComparison.Ordinal));

        var note = Assert.Single(read.Problems);
        Assert.Equal(("calibration-overdue", Severity.Notice), (note.Code, note.Severity));
        Assert.NotNull(read.Book);
    }

    [Theory]
    [InlineData("-0.001 mm", "negative")]
    [InlineData("0.1°", "wrong-quantity")]
    [InlineData("0 mm", null)]
    [InlineData("0.0005 mm", null)]
    public void A_repeatability_is_of_the_instruments_kind_and_not_less_than_nothing(string written, string? code)
    {
        var read = Books.SmallWith("shop.yaml", t => t.Replace("error_limit: 0.002 mm,", $"error_limit: 0.002 mm, repeatability: {written},", StringComparison.Ordinal));

        Assert.Equal(code is null ? [] : [(code, 12)], read.Problems.Select(p => (p.Code, p.Place.Line)));
    }

    [Theory]
    [InlineData("resolution: 0.001 mm, error_limit: 0.002 mm", null)]
    [InlineData("resolution: 0.001 mm", "error-limit")]
    [InlineData("resolution: 0.001 mm, error_limit: 0.002 mm, class: 4 %", "error-limit,wrench-class")]
    [InlineData("resolution: 0.001 mm, class: 4 %", "wrench-class")]
    [InlineData("resolution: 1 N·m, class: 0 %", "wrench-class,wrong-quantity")]
    public void An_instrument_has_an_error_limit_or_a_wrench_a_class(string written, string? codes)
    {
        var read = Books.SmallWith("shop.yaml", t => t.Replace("resolution: 0.001 mm, error_limit: 0.002 mm", written, StringComparison.Ordinal));

        Assert.Equal(codes ?? "", string.Join(",", read.Problems.Select(p => p.Code).Order(StringComparer.Ordinal)));
    }

    [Theory]
    [InlineData("gear: 0, side: coast", null)]
    [InlineData("gear: 12", "no-such-gear")]
    [InlineData("side: left", "unknown-word")]
    public void A_measure_of_dogs_names_a_gear_of_the_gearbox_and_a_side(string written, string? code)
    {
        var box = Directory.GetFiles(Books.Folder("Small/gearboxes"))[0];
        var read = Books.SmallWith($"gearboxes/{Path.GetFileName(box)}", t => t.Replace("wear_makes_it: larger}", $"wear_makes_it: larger, {written}}}", StringComparison.Ordinal));

        Assert.Equal(code is null ? [] : [code], read.Problems.Select(p => p.Code).Distinct());
    }

    [Theory]
    [InlineData("customer/x.yaml", "unknown-folder")]
    [InlineData("customers/x.yml", "wrong-ending")]
    [InlineData("customers/Big Name.yaml", "bad-name")]
    [InlineData("jobs/2026/job.yaml", "misplaced-file")]
    [InlineData("jobs/2026/0009/notes.md", "no-job-file")]
    public void A_file_in_the_wrong_place_is_reported(string path, string code)
    {
        var files = Books.SmallFiles();
        files[path] = "name: X\n"u8.ToArray();

        Assert.Contains(BookReader.Read(new MemoryBookFiles(files)).Problems, p => p.Code == code);
    }

    [Theory]
    [InlineData("../other.md")]
    [InlineData("/etc/passwd.md")]
    [InlineData("C:/notes.md")]
    [InlineData("a/../../b.md")]
    [InlineData("..\\\\b.md")]
    public void A_file_name_that_leads_outside_is_refused(string name)
    {
        var read = Books.SmallWith("jobs/2026/0001/job.yaml", t => t + $"notes: \"{name}\"\n");

        Assert.Equal("bad-file-name", Assert.Single(read.Problems).Code);
    }

    [Fact]
    public void A_link_in_the_book_is_not_followed()
    {
        var folder = Directory.CreateTempSubdirectory("layshaft-test-");
        try
        {
            File.WriteAllText(Path.Combine(folder.FullName, "shop.yaml"), "name: X\n");
            Directory.CreateSymbolicLink(Path.Combine(folder.FullName, "units"), Path.GetTempPath());

            Assert.Contains(BookReader.ReadFolder(folder.FullName).Problems, p => p is { Code: "link", Place.File: "units" });
        }
        finally
        {
            folder.Delete(recursive: true);
        }
    }

    [Fact]
    public void No_change_of_a_few_characters_makes_the_reader_throw()
    {
        var files = Books.SmallFiles();
        string[] paths = [.. files.Keys.Where(k => k.EndsWith(".yaml", StringComparison.Ordinal)).Order(StringComparer.Ordinal)];
        Gen.Select(Gen.Int[0, paths.Length - 1], Gen.Int[0, 4000], Gen.String[0, 4]).Sample(
            (file, at, text) =>
            {
                var changed = new Dictionary<string, byte[]>(files, StringComparer.Ordinal);
                var old = System.Text.Encoding.UTF8.GetString(files[paths[file]]);
                changed[paths[file]] = System.Text.Encoding.UTF8.GetBytes(old.Insert(at % old.Length, text));
                _ = BookReader.Read(new MemoryBookFiles(changed));
            },
            iter: 500);
    }
}
