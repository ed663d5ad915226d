using System.Text.Json.Nodes;
using Layshaft.Book.Problems;
using Layshaft.Book.Records;
using Layshaft.Book.Shapes;
using Layshaft.Book.Yaml;

namespace Layshaft.Book.Tests.Schemas;

/// <summary>A kind of single value: whether the reader takes a text for it, and its schema.</summary>
internal sealed record ValueCase(string Name, Func<string, bool> Reads, Func<JsonObject> Schema)
{
    private static readonly string[] Numbers =
        ["0", "1", "7", "6", "9", "10", "12", "19", "27", "99", "100", "101", "149", "150", "151", "1199", "1200", "1201", "99999", "100000", "100001", "0.35", "0.0", "0.00", "12.50", "12.505", "12.500", "012", "1,5", "1_000", "7:30", ".5", "5.", "1e3", "0x1F", "1.2.3", "four", "NaN", ".inf"];

    private static readonly string[] Units =
        ["mm", "in", "thou", "µm", "m", "km", "\"", "mi", "metres", "MM", "N·m", "Nm", "N m", "lbf·ft", "kg", "lb", "g", "km/h", "mph", "rpm", "m²", "kg/m³", "hPa", "bar", "°C", "F", "ms", "s", "h", "m/s²", "kg·m²", "N/mm", "lbf/in", "°", "′", "%", "hours", "events", "event", "days", "weeks", "month", "years", "N", "kN", "furlongs"];

    private static readonly string[] Words =
    [
        "", " ", "yes", "no", "true", "false", "on", "y", "rear", "circuit", "dog ring", "hill climb", "rounded dogs", "rounded dog", "ring-2", "Ring-2", "ring--2", "-ring", "ring_2", "ring-2\n",
        "notes.md", "notes", "photos/a.jpg", "../a.jpg", "a/../b.md", "/a.md", "a.b.md", ".a.md", "a b.md", "a.md\n", "C:/a.md",
        "2026-03-14", "2026-3-14", "2026-11-31", "2026-11-30", "2026-02-29", "2024-02-29", "2026-13-01", "1949-12-31", "1950-01-01", "2199-12-31", "2200-01-01", "14.03.2026", "2026-00-10", "2026-03-00", "2026-01-32",
        "29/23", "29 / 23", "23 driving 29", "23 drives 29", "29/6", "6/29", "29/151", "150/150", "29/023", "29", "29/23/28", "-29/23", "29.5/23", "+29/23", " 29/23 ",
        "8 MB", "1.5 MB", "600 kB", "8MB", "8 GB", "MB", "0 MB", "8 mb", "-8 MB",
        "https://a.example/b", "https://a.example", "http://a.example:81/b/", " https://a.example/ ", "HTTPS://a.example/", "ftp://a.example/", "a.example", "https://", "https:///b", "https://a.example/?q", "https://a.example/#f", "https://u:p@a.example/", "https://a b.example/", "https://a.example/b c", "mailto:a@b.example",
        "45°/60°", "45° / 90°", "45 °/60 °", "14°/60°", "15°/91°", "45/60", "45°", "45°/60°/80°", "045°/60°", "45.5°/60°", "+45°/60°", " 45°/60° ", "O-I-O", "OIO", "O", "I-I", "o-i-o", "O-I-", "O--I", "O-I-O\n", "A-I-A",
        "#1f5d50", "#1F5D50", "1f5d50", "#1f5d5", "#1f5d50\n", "EUR", "eur", "EURO",
        "0.05 mm to 0.10 mm", "0.05 to 0.10 mm", "0.05–0.10 mm", "at most 0.05 mm", "at least 20 N·m", "at most 20", "about 1 mm", "0.05 mm", "to 0.05 mm", "0.05 mm to", "-0.05 mm to 0.10 mm", "0.05mm to 0.1mm", "0.05 mm  to  0.10 mm",
    ];

    /// <summary>Texts with and without units, signs and blanks; and words.</summary>
    public static IReadOnlyList<string> Texts { get; } =
    [
        .. Words,
        .. Numbers,
        .. Numbers.SelectMany(n => new[] { $"-{n}", $"+{n}", $"−{n}", $"{n} mm", $"{n} h", $"{n} %", $"{n} months", $"{n} rpm", $"-{n} mm", $"+{n} mm", $"−{n} %" }),
        .. Units.SelectMany(u => new[] { u, $"0.12 {u}", $"0.12{u}", $"0.12\u00A0{u}", $" 3 {u} ", $"3  {u}", $"-3 {u}", $"0 {u}", $"0.00 {u}", $"3 {u} 4" }),
    ];

    public static IReadOnlyList<ValueCase> All { get; } =
    [
        Of("text", Scalars.Text), Of("id", Scalars.Id), Of("file", Scalars.FileName), Of("date", Scalars.Date), Of("yes-no", Scalars.YesNo),
        Of("count", Scalars.Count), Of("count-or-none", Scalars.CountOrNone), Of("tooth-count", Scalars.ToothCount), Of("teeth", Scalars.Teeth),
        Of("number", Scalars.Number), Of("positive-number", Scalars.PositiveNumber), Of("share", Scalars.Share), Of("part", Scalars.Part),
        Of("money", Scalars.Money), Of("use", Scalars.Use), Of("span", Scalars.Span), Of("file-size", Scalars.FileSize), Of("web-address", Scalars.WebAddress), Of("colour", Scalars.Colour), Of("currency", Scalars.Currency), Of("band", Scalars.Band),
        Of("any-length", Quantities.AnyLength), Of("length", Quantities.Length), Of("length-or-none", Quantities.LengthOrNone), Of("torque", Quantities.Torque),
        Of("mass", Quantities.Mass), Of("speed", Quantities.Speed), Of("any-speed", Quantities.AnySpeed), Of("rotation", Quantities.Rotation), Of("area", Quantities.Area),
        Of("density", Quantities.Density), Of("pressure", Quantities.Pressure), Of("temperature", Quantities.Temperature), Of("duration", Quantities.Duration),
        Of("acceleration", Quantities.Acceleration), Of("inertia", Quantities.Inertia), Of("angle", Quantities.Angle), Of("measured", Quantities.Measured), Of("reading", Quantities.Reading),
        Of("ramps", Scalars.RampAngles), Of("plates", Scalars.PlateSequence), Of("spring-rate", Quantities.SpringRate), Of("damage", DamageTerms.Shape), Of("use-unit", Shop.UseWords),
    ];

    private static ValueCase Of<T>(string name, Shape<T> shape) => new(
        name,
        text =>
        {
            var problems = new ProblemList();
            return shape.TryRead(new ScalarNode(text, false, 1, 1), new Shapes.Reading("a.yaml", problems), out _);
        },
        shape.Schema);
}
