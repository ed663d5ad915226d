using System.Globalization;
using System.Text;
using Layshaft.Book.Records;

namespace Layshaft.Benchmarks.BigBook;

/// <summary>One visit to the bench, written as the technician would: findings with readings, renewals, settings, gearing.</summary>
internal sealed class BigJob
{
    private static readonly string[] Complaints =
    [
        "It has become slow into second.", "Nothing to complain of; the season is over and it should be looked at.",
        "A whine on the overrun that was not there in spring.", "Third jumped out twice on the last lap.",
        "Oil under the car after every session.", "Hard to select when it is hot.", "A grinding noise into fourth, every time.",
    ];

    private readonly string _unit;
    private readonly Gearbox _box;
    private readonly Shop _shop;
    private readonly Random _random;
    private readonly DateOnly _received;
    private readonly string _use;
    private readonly Unit _kind;
    private readonly Venue _venue;
    private readonly (Part Part, double Wear)[] _looked;
    private readonly HashSet<string> _renewed;
    private readonly bool _isFinished;

    public BigJob(string unit, Gearbox box, Shop shop, IReadOnlyList<Venue> venues, Dictionary<string, double> wear, Random random, DateOnly received, DateOnly last, string use, Unit kind)
    {
        (_unit, _box, _shop, _random, _received, _use, _kind) = (unit, box, shop, random, received, use, kind);
        _venue = venues[random.Next(venues.Count)];
        _looked = [.. box.Parts.Where(p => p.Measures.Count > 0 && (wear[p.Id] > 0.6 || random.Next(4) != 0)).Select(p => (p, wear[p.Id])).Take(16)];
        _renewed = [.. _looked.Where(l => l.Wear >= l.Part.Grading.RenewFrom * 0.95).Select(l => l.Part.Id)];
        _isFinished = received.AddDays(24) < last;
        if (_isFinished)
        {
            foreach (var part in _renewed)
            {
                wear[part] = 0;
            }
        }
    }

    public static string PhotoName(int i) => string.Create(CultureInfo.InvariantCulture, $"bench-{i + 1}.jpg");

    public string? Notes() => _isFinished && _received.DayNumber % 3 == 0
        ? $"What we saw on {_unit.ToUpperInvariant()}\n\nThe **oil** was dark, the plug had a *thin* grey film and no slivers.\n\n- looked at {_looked.Length} parts\n- renewed {_renewed.Count} of them\n\nRun it in for two sessions and change the oil after the first.\n"
        : null;

    public string Yaml(int photos)
    {
        var text = new StringBuilder();
        Line(text, $"unit: {_unit}\nreceived: {_received:yyyy-MM-dd}\nuse: {_use}\ncomplaint: {Complaints[_random.Next(Complaints.Length)]}");
        Line(text, $"technician: {Technician}\ndriver: {new[] { "first season", "some seasons", "many seasons" }[_random.Next(3)]}\nstripped: {_received.AddDays(2):yyyy-MM-dd}");
        if (_isFinished)
        {
            Line(text, $"verdict: {(_renewed.Count == 0 ? "Everything in it is sound, nothing had to be renewed." : $"{_renewed.Count} worn parts are new, the rest of the box is sound.")}");
        }

        Findings(text);
        Photos(text, photos);
        Estimate(text);
        if (_isFinished)
        {
            Renewed(text);
            new BigSettings(_box, _random, Technician).Write(text);
        }

        Events(text);
        if (_isFinished)
        {
            Line(text, $"come_back:\n  after: {(_use.EndsWith('h') ? "25 h" : "10 events")}\n  reason: To see how the new parts have run in.\nfinished: {_received.AddDays(12):yyyy-MM-dd}");
            if (_received.DayNumber % 3 == 0)
            {
                Line(text, $"notes: notes.md");
            }
        }

        return text.ToString();
    }

    private IEnumerable<string> Seals => _box.Parts.Where(p => p.Kind == PartKind.Seal).Select(p => p.Id);

    private string Technician => _shop.Technicians[_received.DayNumber % _shop.Technicians.Count].Id;

    private void Findings(StringBuilder text)
    {
        Line(text, $"findings:");
        foreach (var (part, wear) in _looked)
        {
            Line(text, $"  - part: {part.Id}\n    measurements:");
            foreach (var measure in part.Measures)
            {
                if (MeasureWords.Of(measure, wear, _random) is { } words)
                {
                    Line(text, $"      - {{ measure: {measure.Id}, {words} }}");
                }
            }

            if (ConditionWords.Of(part.Kind, wear) is { } condition)
            {
                Line(text, $"    conditions: [{condition}]");
            }

            if (_isFinished && wear > part.Grading.RenewFrom * 0.7 && !_renewed.Contains(part.Id))
            {
                Line(text, $"    left_in: The limit is near, and it is measured again at the next visit.");
            }

            if (wear > 0.5)
            {
                Line(text, $"    sentence: The {char.ToLowerInvariant(part.Name[0])}{part.Name[1..]} {(wear > 0.9 ? "is at the end of its life" : "is over half through its allowance")}.\n    if_left: It would be worn out before the season ends.");
            }
        }
    }

    private void Photos(StringBuilder text, int count)
    {
        if (count > 0)
        {
            Line(text, $"photos:");
        }

        for (var i = 0; i < count; i++)
        {
            var part = _looked[i % _looked.Length].Part;
            Line(text, $"  - file: {PhotoName(i)}\n    caption: \"{part.Name} as it came out.\"\n    callouts:\n      - {{ mark: circle, x: {20 + _random.Next(60)} %, y: {20 + _random.Next(60)} %, radius: 8 %, label: \"Worn here\" }}");
        }
    }

    private void Estimate(StringBuilder text)
    {
        Line(text, $"estimate:\n  sent: {_received.AddDays(3):yyyy-MM-dd}\n  lines:\n    - work: Strip, clean, measure, rebuild and rig run\n      hours: 10.5\n      need: must");
        foreach (var part in _renewed.Order(StringComparer.Ordinal))
        {
            Line(text, $"    - part: {part}\n      need: must\n      if_left: It would be worn out before the season ends.");
        }

        if (_isFinished)
        {
            foreach (var part in Seals)
            {
                Line(text, $"    - part: {part}\n      need: must");
            }
        }

        if (_isFinished || _random.Next(2) == 0)
        {
            Line(text, $"go_ahead:\n  answer: yes\n  on: {_received.AddDays(4):yyyy-MM-dd}");
        }
    }

    private void Renewed(StringBuilder text)
    {
        Line(text, $"renewed:");
        foreach (var part in _renewed.Order(StringComparer.Ordinal))
        {
            Line(text, $"  - part: {part}\n    why: Worn to its limit.");
        }

        foreach (var part in Seals)
        {
            Line(text, $"  - part: {part}");
        }

        Line(text, $"build_list: {{ done: [{string.Join(", ", _box.Build.Select(s => s.Id))}], signed_by: {Technician} }}");
    }

    // The events of a season are the same for all who go there, so their weather is too.
    private void Events(StringBuilder text)
    {
        var laps = _venue.Kind == VenueKind.Circuit ? 30 + (_received.DayNumber % 20) : 8;
        Line(text, $"last_event:\n  venue: {_venue.Id}\n  on: {_received.AddDays(-5):yyyy-MM-dd}\n  name: Round {_received.DayNumber % 9 + 1}\n  laps: {laps}\n  temperature: {Weather(_received)} °C\n  drop_pair: {_kind.DropPair}\n  final_drive: {_kind.FinalDrive}");
        if (_isFinished && _random.Next(10) < 7)
        {
            var weekend = _received.AddDays(14 + (7 - (_received.DayNumber % 7)));
            Line(text, $"next_event:\n  venue: {_venue.Id}\n  on: {weekend:yyyy-MM-dd}\n  name: Round {weekend.DayNumber % 9 + 1}\n  laps: {laps}\n  temperature: {Weather(weekend)} °C\n  humidity: 60 %");
        }
    }

    private static int Weather(DateOnly day) => 8 + (int)Math.Round(10 * Math.Sin(Math.PI * day.DayOfYear / 365)) + (day.DayNumber * 7 % 5);

    private static void Line(StringBuilder text, FormattableString line) => text.Append(line.ToString(CultureInfo.InvariantCulture)).Append('\n');
}
