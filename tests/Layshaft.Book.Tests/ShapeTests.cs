using Layshaft.Book.Problems;
using Layshaft.Book.Records;
using Layshaft.Book.Yaml;

namespace Layshaft.Book.Tests;

public class ShapeTests
{
    [Fact]
    public void An_unknown_key_is_reported_at_its_place_with_the_nearest_field()
    {
        var problems = new ProblemList();
        var root = NodeReader.Read("customers/a.yaml", "name: Ada\ntelefone: 1\n", problems);

        Assert.True(Customer.Shape.TryRead(root!, new Shapes.Reading("customers/a.yaml", problems), out _));

        var problem = Assert.Single(problems.InOrder());
        Assert.Equal(("unknown-key", 2, 1), (problem.Code, problem.Place.Line, problem.Place.Column));
        Assert.Contains("'telephone'", problem.Remedy, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("nmae: Ada\n", "unknown-key")]
    [InlineData("email: ada@shop.example\n", "missing-field")]
    [InlineData("nmae: Ada\nzzz: 1\n", "unknown-key unknown-key")]
    [InlineData("zzz: 1\n", "missing-field unknown-key")]
    public void A_slip_in_the_name_of_a_needed_field_is_told_once(string text, string codes)
    {
        var problems = new ProblemList();
        var root = NodeReader.Read("customers/a.yaml", text, problems);

        Assert.False(Customer.Shape.TryRead(root!, new Shapes.Reading("customers/a.yaml", problems), out _));

        Assert.Equal(codes, string.Join(' ', problems.InOrder().Select(p => p.Code).Order(StringComparer.Ordinal)));
    }

    [Theory]
    [InlineData("[0,78 mm, 0.76 mm]", "comma-in-list", "Write 0.78 mm.")]
    [InlineData("[0.76 mm, 0,78 mm]", "comma-in-list", "Write 0.78 mm.")]
    [InlineData("[78, 0.76 mm]", "bad-quantity", "Write 78 mm or 78 in.")]
    public void A_comma_in_a_number_of_a_list_is_told_as_such(string list, string code, string remedy)
    {
        var problems = new ProblemList();
        var root = NodeReader.Read("a.yaml", list, problems);

        new Shapes.ListShape<UnitsNet.IQuantity>(Shapes.Quantities.Measured).TryRead(root!, new Shapes.Reading("a.yaml", problems), out var read);

        var problem = Assert.Single(problems.InOrder());
        Assert.Equal((code, remedy), (problem.Code, problem.Remedy));
        Assert.Single(read!);
    }

    [Theory]
    [InlineData("name: Ada\nemail:\n", "Write text, or remove the line.")]
    [InlineData("name:\n", "Write text.")]
    public void Only_an_empty_optional_field_may_be_removed(string text, string remedy)
    {
        var problems = new ProblemList();
        var root = NodeReader.Read("customers/a.yaml", text, problems);

        Customer.Shape.TryRead(root!, new Shapes.Reading("customers/a.yaml", problems), out _);

        var problem = Assert.Single(problems.InOrder());
        Assert.Equal(("nothing-written", remedy), (problem.Code, problem.Remedy));
    }

    [Theory]
    [InlineData("1,135 kg", "Write 1135 kg or 1.135 kg, whichever is meant.")]
    [InlineData("1,1 kg", "Write 1.1 kg.")]
    [InlineData("012 kg", "Write 12 kg.")]
    public void A_number_that_is_written_wrongly_is_written_right_with_its_unit(string text, string remedy) =>
        Assert.Equal(remedy, Values.UnitWords.Mass.Parse(text).Remedy);

    [Fact]
    public void Every_field_of_every_file_has_a_meaning_in_the_schema()
    {
        Assert.All(
            Job.Shape.Describe().Concat(Gearbox.Shape.Describe()).Concat(Shop.Shape.Describe()),
            field => Assert.False(string.IsNullOrWhiteSpace(field.Meaning)));
        Assert.Contains("received", Job.Shape.Schema()["required"]!.AsArray().Select(n => n!.GetValue<string>()));
    }
}
