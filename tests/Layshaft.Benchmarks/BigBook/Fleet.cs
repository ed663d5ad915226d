using System.Globalization;
using System.Text.RegularExpressions;
using Layshaft.Book.Records;

namespace Layshaft.Benchmarks.BigBook;

/// <summary>Customers, their cars, and the units in them.</summary>
internal sealed partial class Fleet
{
    private static readonly string[] GivenNames = ["Ada", "Benno", "Carys", "Dunstan", "Edda", "Fenn", "Gwil", "Hesper", "Ivo", "Jory", "Kit", "Lowen", "Merrin", "Nye", "Orla", "Piran", "Quill", "Rhys", "Senna", "Tegan"];
    private static readonly string[] FamilyNames = ["Ashdown", "Brackley", "Corrow", "Dunmere", "Elvan", "Farrow", "Greave", "Holt", "Ingleby", "Jarrold", "Kellow", "Lanyon", "Marlow", "Northey", "Oakes", "Penrose", "Quarrell", "Rudge", "Sallow", "Tarn"];

    private readonly List<(string Path, string Text)> _files = [];
    private readonly List<FleetUnit> _units = [];

    public Fleet(ShopBook from, BigBookOptions options, Random random, DateOnly first)
    {
        var customers = Customers(Math.Max(4, options.Units / 3), random);
        var kinds = from.Units.Values.Where(u => u.Car is not null).OrderBy(u => u.Id, StringComparer.Ordinal).ToArray();
        var venues = from.Venues.Values.OrderBy(v => v.Id, StringComparer.Ordinal).ToArray();
        for (var i = 1; i <= options.Units; i++)
        {
            var kind = kinds[random.Next(kinds.Length)];
            var box = from.GearboxOf(kind);
            var owner = customers[random.Next(customers.Count)];
            var number = i.ToString("0000", CultureInfo.InvariantCulture);
            var car = $"car-{number}";
            _files.Add(($"cars/{car}.yaml", Car(File.ReadAllText(Path.Combine(options.Base, "cars", $"{kind.Car}.yaml")), owner, i, random)));
            var inService = first.AddDays(random.Next(0, 3000));
            var unit = new FleetUnit($"{kind.Id[..kind.Id.IndexOf('-', StringComparison.Ordinal)]}-{number}", kind, box, from.Shop, inService, [.. venues.Where(v => v.Kind == from.Venues.Values.First(w => FitsBox(w, box)).Kind)], random.Next());
            var later = random.Next(5) == 0 ? customers[random.Next(customers.Count)] : null;
            _files.Add(($"units/{unit.Id}.yaml", unit.Yaml(owner, later, car)));
            _units.Add(unit);
        }
    }

    public IReadOnlyList<(string Path, string Text)> Files => _files;

    public IReadOnlyList<FleetUnit> Units => _units;

    // The box that is counted in events climbs hills, the others go round circuits.
    private static bool FitsBox(Venue venue, Gearbox box) => (venue.Kind == VenueKind.Circuit) != box.Parts.Any(p => p.ServiceLife is { Unit: Book.Values.UseUnit.Events });

    private List<string> Customers(int count, Random random)
    {
        var ids = new List<string>();
        for (var i = 1; i <= count; i++)
        {
            var id = string.Create(CultureInfo.InvariantCulture, $"customer-{i:0000}");
            var given = GivenNames[random.Next(GivenNames.Length)];
            var family = FamilyNames[random.Next(FamilyNames.Length)];
            ids.Add(id);
            _files.Add(($"customers/{id}.yaml", string.Create(
                CultureInfo.InvariantCulture,
                $"name: {given} {family}\ngreeting: {given}\nemail: {id}@post.example\ntelephone: +44 1632 96{i % 10000:0000}\n")));
        }

        return ids;
    }

    // Each car a little other than the next: weight, air, grip. A few of them on the public pages.
    private static string Car(string text, string owner, int number, Random random)
    {
        var factor = 0.97 + (0.06 * random.NextDouble());
        text = NameLine().Replace(text, string.Create(CultureInfo.InvariantCulture, $"name: Car {number}"));
        text = EarlierCustomersLine().Replace(CustomerLine().Replace(text, $"customer: {owner}"), string.Empty);
        text = PublicLine().Replace(text, number % 50 == 0 ? "public: yes" : "public: no");
        text = MassLine().Replace(text, m => string.Create(CultureInfo.InvariantCulture, $"mass: {double.Parse(m.Groups[1].Value, CultureInfo.InvariantCulture) * factor:0} kg"));
        return GripLine().Replace(text, m => string.Create(CultureInfo.InvariantCulture, $"grip: {double.Parse(m.Groups[1].Value, CultureInfo.InvariantCulture) * factor:0.000}"));
    }

    [GeneratedRegex("^name: .*$", RegexOptions.Multiline)]
    private static partial Regex NameLine();

    [GeneratedRegex("^customer: .*$", RegexOptions.Multiline)]
    private static partial Regex CustomerLine();

    [GeneratedRegex("^earlier_customers: .*\n", RegexOptions.Multiline)]
    private static partial Regex EarlierCustomersLine();

    [GeneratedRegex("^public: .*$", RegexOptions.Multiline)]
    private static partial Regex PublicLine();

    [GeneratedRegex("^mass: ([0-9.]+) kg.*$", RegexOptions.Multiline)]
    private static partial Regex MassLine();

    [GeneratedRegex("^grip: ([0-9.]+).*$", RegexOptions.Multiline)]
    private static partial Regex GripLine();
}
