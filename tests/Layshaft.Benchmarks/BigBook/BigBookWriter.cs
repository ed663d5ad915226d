using System.Globalization;
using Layshaft.Book.Reading;
using Layshaft.Book.Records;

namespace Layshaft.Benchmarks.BigBook;

/// <summary>
/// Writes the book of a shop with many seasons behind it: the gearboxes, venues and kinds of car of another book, with as
/// many customers, cars, units and visits to the bench as asked for. The same options give the same bytes.
/// </summary>
internal sealed class BigBookWriter
{
    private static readonly DateOnly First = new(2016, 3, 1);
    private static readonly DateOnly Last = new(2026, 11, 20);

    private readonly BigBookOptions _options;
    private readonly ShopBook _base;
    private readonly Random _random;

    private BigBookWriter(BigBookOptions options, ShopBook from) => (_options, _base, _random) = (options, from, new Random(options.Seed));

    /// <summary>Writes it.</summary>
    public static void Write(BigBookOptions options)
    {
        if (BookReader.ReadFolder(options.Base).Book is not { } from)
        {
            throw new InvalidOperationException($"The book in {options.Base} cannot be used; 'layshaft check' says why.");
        }

        new BigBookWriter(options, from).Write();
    }

    private void Write()
    {
        string[] single = [BookLayout.ShopFile, .. _base.Shop.Logo is { } logo ? new[] { logo } : []];
        foreach (var path in new[] { "gearboxes", "venues" }.SelectMany(f => Directory.EnumerateFiles(Path.Combine(_options.Base, f))).Concat(single.Select(f => Path.Combine(_options.Base, f))))
        {
            PutBytes(Path.GetRelativePath(_options.Base, path), File.ReadAllBytes(path));
        }

        var fleet = new Fleet(_base, _options, _random, First);
        foreach (var (path, text) in fleet.Files)
        {
            Put(path, text);
        }

        var photos = new PhotoStock(_options.PhotoWidth, _options.Seed);
        foreach (var (number, visit) in Visits(fleet.Units).Select((v, i) => (i + 1, v)))
        {
            var folder = string.Create(CultureInfo.InvariantCulture, $"jobs/{visit.Received.Year:0000}/{number:00000}");
            var job = visit.Unit.Visit(visit.Received, Last, _options.Photos);
            Put($"{folder}/job.yaml", job.Yaml);
            if (job.Notes is { } notes)
            {
                Put($"{folder}/notes.md", notes);
            }

            for (var i = 0; i < _options.Photos; i++)
            {
                PutBytes($"{folder}/photos/{BigJob.PhotoName(i)}", photos.Jpeg((number * 64) + i));
            }
        }
    }

    // The visits of a unit lie roughly a season's half apart; all of them together in order of day give the numbers.
    private List<(FleetUnit Unit, DateOnly Received)> Visits(IReadOnlyList<FleetUnit> units)
    {
        var visits = new List<(FleetUnit Unit, DateOnly Received, int Order)>();
        for (var i = 0; i < _options.Jobs; i++)
        {
            var unit = units[i < units.Count ? i : _random.Next(units.Count)];
            var span = Last.DayNumber - unit.InService.DayNumber - 14;
            visits.Add((unit, unit.InService.AddDays(14 + _random.Next(Math.Max(1, span))), i));
        }

        // Two visits of one unit within a month become one some days later.
        var taken = new HashSet<(string, int)>();
        return [.. visits.OrderBy(v => v.Received).ThenBy(v => v.Order)
            .Select(v => (v.Unit, Received: v.Unit.Next(v.Received, Last)))
            .Where(v => taken.Add((v.Unit.Id, v.Received.DayNumber)))
            .OrderBy(v => v.Received).ThenBy(v => v.Unit.Id, StringComparer.Ordinal)];
    }

    private void Put(string path, string text) => PutBytes(path, System.Text.Encoding.UTF8.GetBytes(text));

    private void PutBytes(string path, byte[] bytes)
    {
        var place = Path.Combine(_options.Folder, path.Replace('/', Path.DirectorySeparatorChar));
        Directory.CreateDirectory(Path.GetDirectoryName(place)!);
        File.WriteAllBytes(place, bytes);
    }
}
