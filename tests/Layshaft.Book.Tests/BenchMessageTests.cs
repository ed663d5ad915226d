using Layshaft.Book.Problems;
using Layshaft.Book.Reading;
using Layshaft.Book.Shapes;
using Layshaft.Book.Values;
using Layshaft.Book.Yaml;

namespace Layshaft.Book.Tests;

/// <summary>Mistakes as people at a bench make them: one message each, with what to write instead.</summary>
public class BenchMessageTests
{
    private const string Gearbox = "gearboxes/four-speed.yaml";
    private const string Job = "jobs/2026/0001/job.yaml";

    [Theory]
    [InlineData("35-45 N·m", "Write 35 to 45 N·m.")]
    [InlineData("0.05mm - 0.10mm", "Write 0.05 to 0.10 mm.")]
    [InlineData("40 ± 5 N·m", "Write 35 to 45 N·m.")]
    [InlineData("0.07 mm +/- 0.02 mm", "Write 0.05 to 0.09 mm.")]
    [InlineData("max 45 N·m", "Write at most 45 N·m.")]
    [InlineData("max. 45 N·m", "Write at most 45 N·m.")]
    [InlineData("<= 0.05 mm", "Write at most 0.05 mm.")]
    [InlineData("min 20 N·m", "Write at least 20 N·m.")]
    [InlineData("35-45", "Write 35 to 45 and the unit.")]
    public void A_band_of_another_notation(string written, string remedy) => Assert.Equal(remedy, BandText.Parse(written).Remedy);

    [Theory]
    [InlineData("9 h", "Write 9.")]
    [InlineData("9.5h", "Write 9.5.")]
    public void Hours_with_their_unit(string written, string remedy) => Assert.Equal(remedy, RemedyOf(Scalars.Hours, written));

    [Theory]
    [InlineData("£38", "Write 38.")]
    [InlineData("38.50 €", "Write 38.50.")]
    [InlineData("EUR 38", "Write 38.")]
    public void An_amount_with_its_currency(string written, string remedy) => Assert.Equal(remedy, RemedyOf(Scalars.Money, written));

    [Fact]
    public void No_drop_gears_are_no_line() => Assert.Equal("Remove the line if nothing is fitted or changed.", RemedyOf(Scalars.Teeth, "none"));

    [Fact]
    public void Usage_in_miles() => Assert.Equal("Usage in distance is in km: write 1996 km.", Use.Parse("1240 miles").Remedy);

    [Theory]
    [InlineData("20º")]
    [InlineData("20˚")]
    public void A_look_alike_of_the_degree_sign(string written) => Assert.Equal("Write 20°.", RemedyOf(Quantities.Angle, written));

    [Theory]
    [InlineData("1/32 in", "Write 0.03125 in.")]
    [InlineData("1 1/8\"", "Write 1.125 \".")]
    public void A_fraction_of_an_inch(string written, string remedy) => Assert.Equal(remedy, RemedyOf(Quantities.Length, written));

    [Theory]
    [InlineData("3 kgm")]
    [InlineData("3 nm")]
    public void A_unit_that_could_be_of_several_quantities_is_not_guessed(string written) => Assert.DoesNotContain("Did you mean", RemedyOf(Quantities.Measured, written), StringComparison.Ordinal);

    [Theory]
    [InlineData("Zahnräder Größe (1).JPG", "zahnraeder-groesse-1.jpg")]
    [InlineData("Jo's ring, worn.jpg", "jo-s-ring-worn.jpg")]
    [InlineData("IMG_2041 [2].heic", "img-2041-2.heic")]
    [InlineData("é.png", "e.png")]
    public void A_file_name_as_telephones_and_people_give_it(string written, string name) =>
        Assert.Equal($"Rename the file, for example to '{name}', and write that name.", RemedyOf(Scalars.FileName, written));

    [Fact]
    public void A_file_name_of_broken_characters_is_refused_without_a_crash() => Assert.All(
        ["ring\uD83D.jpg", "ring\uDE00.jpg", "ring\uFFFE.jpg"],
        written => Assert.Equal("Rename the file, for example to 'ring.jpg', and write that name.", RemedyOf(Scalars.FileName, written)));

    [Theory]
    [InlineData("Fork 1-2", "fork-12")]
    [InlineData("Fork_12", "fork-12")]
    public void A_name_as_people_say_it(string written, string name)
    {
        var problem = Assert.Single(Books.SmallWith(Job, t => t.Replace("- part: fork-12", $"- part: {written}", StringComparison.Ordinal)).Problems, p => p.Severity == Severity.Stops);
        Assert.Equal($"Did you mean '{name}'?", problem.Remedy);
    }

    [Fact]
    public void One_mistyped_kind_of_part_is_one_problem()
    {
        var problem = Assert.Single(Books.SmallWith(Gearbox, t => t.Replace("kind: dog ring", "kind: dogring", StringComparison.Ordinal)).Problems);
        Assert.Equal(("unknown-word", Gearbox), (problem.Code, problem.Place.File));
        Assert.Equal("Did you mean 'dog ring'?", problem.Remedy);
    }

    [Theory]
    [InlineData(Job, "Rename it to 'job.yaml'.")]
    [InlineData("shop.yaml", "Rename it to 'shop.yaml'.")]
    [InlineData("customers/first-customer.yaml", "Rename it to 'first-customer.yaml'.")]
    public void A_hidden_second_extension_is_found(string file, string remedy)
    {
        var files = Books.SmallFiles();
        files[file + ".txt"] = files[file];
        files.Remove(file);

        var problem = Assert.Single(BookReader.Read(new MemoryBookFiles(files)).Problems, p => p.Place.File.StartsWith(file[..^5], StringComparison.Ordinal));

        Assert.Equal(("wrong-ending", remedy), (problem.Code, problem.Remedy));
    }

    [Fact]
    public void An_empty_shop_file_is_one_problem() => Assert.Single(Books.SmallWith("shop.yaml", _ => "").Problems, p => p.Severity == Severity.Stops);

    [Fact]
    public void A_photo_beside_its_folder_is_found()
    {
        var files = Books.SmallFiles();
        files["jobs/2026/0001/ring.png"] = files["jobs/2026/0001/photos/ring.png"];
        files["jobs/2026/0001/fork.jpg"] = [1];
        files.Remove("jobs/2026/0001/photos/ring.png");

        var problems = BookReader.Read(new MemoryBookFiles(files)).Problems;

        Assert.Equal("Move jobs/2026/0001/ring.png there.", Assert.Single(problems, p => p.Severity == Severity.Stops).Remedy);
        Assert.Equal("jobs/2026/0001/fork.jpg", Assert.Single(problems, p => p.Code == "photo-misplaced").Place.File);
    }

    private static string RemedyOf<T>(Shape<T> shape, string text)
    {
        var problems = new ProblemList();
        Assert.False(shape.TryRead(new ScalarNode(text, true, 1, 1), new Shapes.Reading("a.yaml", problems), out _));
        return Assert.Single(problems.All).Remedy;
    }
}
