using System.Collections;
using System.Reflection;
using System.Text;
using CsCheck;
using Layshaft.Book.Problems;
using Layshaft.Book.Reading;
using Layshaft.Book.Shapes;
using Layshaft.Book.Values;
using Layshaft.Book.Yaml;
using Layshaft.Engineering.Gearing;
using UnitsNet;

namespace Layshaft.Book.Tests.Hostile;

/// <summary>Made-up input never ends in anything but a value or a problem.</summary>
public class FuzzTests
{
    private const string Job = "jobs/2026/0001/job.yaml";

    private static readonly string[] s_figures =
    [
        "0.12 mm", "4.7 thou", "128 lbf·ft", "1.08 kg/m³", "7800 rpm", "54 %", "18 °C", "80 ms", "0.05 mm to 0.10 mm", "at most 0.05 mm", "0.05–0.10 mm", "23 driving 29",
        "41/11", "21.5 h", "6 events", "12 months", "2026-03-14", "March to October", "145.00", "#1f5d50", "EUR", "ring-2", "notes.md", "photos/a.png", "-0.35", "1240 km",
    ];

    /// <summary>Every shape of a single value there is.</summary>
    public static TheoryData<string> Shapes
    {
        get
        {
            var names = new TheoryData<string>();
            foreach (var property in ScalarShapes())
            {
                names.Add($"{property.DeclaringType!.Name}.{property.Name}");
            }

            return names;
        }
    }

    [Fact]
    public void The_yaml_reader_gives_nodes_or_a_problem_with_a_place() => Fuzz.Sample(
        "YAML reader",
        Gen.OneOf(Fuzz.Soup, Fuzz.Spoilt([.. Books.SmallFiles().Where(f => f.Key.EndsWith(".yaml", StringComparison.Ordinal)).Select(f => Encoding.UTF8.GetString(f.Value))])),
        text =>
        {
            var problems = new ProblemList();
            var decoded = YamlText.Decode(Encoding.UTF8.GetBytes(text), Job, problems);
            var root = decoded is null ? null : NodeReader.Read(Job, decoded, problems);
            Assert.True(root is not null || problems.Count > 0);
            Assert.All(problems.InOrder(), p => Assert.True(p.Place.Line >= 0 && p.Place.Column >= 0 && p.Message.Length is > 0 and < 1000));
        },
        3000);

    [Fact]
    public void A_book_with_a_spoilt_file_is_read_whole_or_not_at_all()
    {
        var small = Books.SmallFiles();
        string[] paths = [.. small.Keys.Where(p => p.EndsWith(".yaml", StringComparison.Ordinal)).Order(StringComparer.Ordinal)];
        Fuzz.Sample(
            "book reader",
            Gen.Int[0, paths.Length - 1].SelectMany(i => Fuzz.Spoilt(Encoding.UTF8.GetString(small[paths[i]])).Select(t => (Path: paths[i], Text: t))),
            spoilt =>
            {
                var files = new Dictionary<string, byte[]>(small, StringComparer.Ordinal) { [spoilt.Path] = Encoding.UTF8.GetBytes(spoilt.Text) };
                var read = BookReader.Read(new MemoryBookFiles(files));
                Assert.Equal(read.Book is null, read.Problems.Any(p => p.Severity == Severity.Stops));
            },
            300);
    }

    [Theory]
    [MemberData(nameof(Shapes))]
    public void A_single_value_is_read_as_something_finite_or_refused_with_a_reason(string name)
    {
        var shape = ScalarShapes().Single(p => $"{p.DeclaringType!.Name}.{p.Name}" == name).GetValue(null)!;
        var read = shape.GetType().GetMethod("TryRead")!;
        Fuzz.Sample(
            "units: " + name,
            Gen.OneOf(Fuzz.Soup, Fuzz.Spoilt(s_figures)),
            text =>
            {
                var problems = new ProblemList();
                object?[] arguments = [new ScalarNode(text, false, 1, 1), new Layshaft.Book.Shapes.Reading(Job, problems), null];
                Assert.Equal((bool)read.Invoke(shape, arguments)!, problems.Count == 0);
                Assert.True(problems.Count > 0 || IsFinite(arguments[2]));
            },
            200,
            share: 1.0 / ScalarShapes().Count());
    }

    [Fact]
    public void A_tyre_code_is_a_tyre_that_can_be_or_is_refused_with_a_reason() => Fuzz.Sample(
        "tyre codes",
        Gen.OneOf(Fuzz.Soup, Fuzz.Spoilt("205/50R15 86V", "195/50ZR15 (82Y)", "P225/45R17", "LT235/75R15", "20x53-13", "180/550R13", "6.00-16", "5.50 L 15", "31x10.50R15LT")),
        text =>
        {
            var size = TyreSize.Parse(text);
            if (!size.TryGet(out var tyre))
            {
                Assert.NotEmpty(size.ToString()!);
                return;
            }

            if (RollingTyre.FromSize(tyre).TryGet(out var rolling))
            {
                Assert.InRange(rolling.Circumference.Meters, 0.01, 100);
            }
        },
        3000);

    private static IEnumerable<PropertyInfo> ScalarShapes() => new[] { typeof(Scalars), typeof(Quantities) }
        .SelectMany(t => t.GetProperties(BindingFlags.Public | BindingFlags.Static))
        .Where(p => p.PropertyType is { IsGenericType: true } type && type.GetGenericTypeDefinition() == typeof(Shape<>));

    private static bool IsFinite(object? value) => value switch
    {
        null => false,
        double number => double.IsFinite(number),
        IQuantity quantity => double.IsFinite((double)quantity.Value),
        Band<IQuantity> band => new object?[] { band.Low, band.High }.OfType<IQuantity>().All(q => double.IsFinite((double)q.Value)),
        string text => text.Length > 0,
        IEnumerable list => list.Cast<object?>().All(IsFinite),
        _ => true,
    };
}
