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

    [Fact]
    public void Every_field_of_every_file_has_a_meaning_in_the_schema()
    {
        Assert.All(
            Job.Shape.Describe().Concat(Gearbox.Shape.Describe()).Concat(Shop.Shape.Describe()),
            field => Assert.False(string.IsNullOrWhiteSpace(field.Meaning)));
        Assert.Contains("received", Job.Shape.Schema()["required"]!.AsArray().Select(n => n!.GetValue<string>()));
    }
}
