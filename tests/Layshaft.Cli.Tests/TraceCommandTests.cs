using System.Globalization;
using System.Text;
using System.Text.Json;
using Layshaft.Cli.Commands;
using Layshaft.Engineering.Tests.Traces;
using Layshaft.Engineering.Traces;

namespace Layshaft.Cli.Tests;

public sealed class TraceCommandTests : IDisposable
{
    // The demo's saloon 8: gears of the circuit set, 33/27 and 39/10.
    private static readonly double[] s_overall = [.. new[] { 43.0 / 17, 39.0 / 21, 36.0 / 25, 33.0 / 28, 1, 28.0 / 32 }.Select(g => g * 33 / 27 * 39 / 10)];

    private static readonly MadeUpLaps s_laps = MadeUpLaps.Drive(new MadeUpDrive
    {
        Overall = s_overall,
        Corners = [new(23, 26, 600), new(30, 33, 350), new(19, 22, 700)],
        Pull = (speed, _) => Math.Min(5.5, 120 / Math.Max(speed, 1)),
        CircumferenceM = 1.92,
        ShiftRpm = 7300,
        ShiftS = 0.13,
        DownshiftRpm = 6300,
        LimiterRpm = 7500,
        Laps = 4,
        IsMatched = (from, to, lap) => (from, to, lap) != (3, 2, 3),
    });

    private readonly DirectoryInfo _temp = Directory.CreateTempSubdirectory("layshaft-trace-");

    public void Dispose() => _temp.Delete(recursive: true);

    [Fact]
    public void It_says_what_the_trace_shows()
    {
        var (code, output, errors) = Run(Demo, Written(Point()));
        Assert.Equal((0, string.Empty), (code, errors));
        Assert.StartsWith("Saloon, car 8, Calvane S6 (S6-118).", output, StringComparison.Ordinal);
        Assert.Contains("Laps: 2 whole, by the lap column.", output, StringComparison.Ordinal);
        Assert.Contains("Gears: as in the book, 33/27 (1.222) with 39/10 (3.900) (driven/driver).", output, StringComparison.Ordinal);
        Assert.Matches(@"Shift time: 1[1-4]\d ± \d\d? ms, mean of the upshifts \(book: 130 ms\)", output);
        Assert.Matches(@"3 to 2 .* [1-9]\n", output);
        Assert.Contains("Above the limiter: never by more than 1 %.", output, StringComparison.Ordinal);
        Assert.DoesNotContain("NaN", output, StringComparison.Ordinal);
    }

    [Fact]
    public void Semicolons_decimal_commas_and_units_below_the_header_change_nothing()
    {
        var german = Written(["Protokoll der Fahrt", "Zeit;v;Drehzahl;Gas;Runde", "ms;m/s;1/s;%;", .. Rows().Select(r => string.Join(';', (r.TimeS * 1000).ToString("0", CultureInfo.InvariantCulture), Comma(r.SpeedMps, "0.0000"), Comma(r.EngineRpm / 60, "0.0000"), Comma(r.Throttle * 100, "0.0"), r.Lap.ToString(CultureInfo.InvariantCulture)))]);
        var book = DemoWith("trace_columns: { header_line: 2, decimal_comma: yes, speed_from: free wheels, time: Zeit, speed: v, engine_speed: Drehzahl, throttle: Gas, lap: Runde }");
        var (code, output, errors) = Run(book, german);
        Assert.Equal((0, string.Empty), (code, errors));
        Assert.Equal(Run(Demo, Written(Point())).Output, output);
    }

    [Fact]
    public void Units_stand_behind_the_name_or_in_the_header()
    {
        var feet = Written(["t,Speed (mph),RPM,Throttle,Lap", .. Rows().Select(r => Line(r, r.SpeedMps * 3600 / 1609.344))]);
        var book = DemoWith("trace_columns: { time: t, speed: Speed (mph), engine_speed: 3, throttle: Throttle in %, lap: Lap, speed_from: free wheels }");
        var (code, output, errors) = Run(book, feet);
        Assert.Equal((0, string.Empty), (code, errors));
        Assert.Equal(Run(Demo, Written(Point())).Output, output);
    }

    [Fact]
    public void A_value_that_is_no_number_is_reported_with_row_and_column_and_left_out()
    {
        string[] lines = [.. Point()];
        lines[40] = "0.950,fast,4000,20,1";
        lines[50] = lines[49];
        lines[60] = lines[55];
        var file = Written(lines);
        var (code, output, errors) = Run(Demo, file);
        Assert.Equal(1, code);
        Assert.Contains($"{file}(41,7): The speed 'fast' is not a number. The row is left out. [trace-value]", errors, StringComparison.Ordinal);
        Assert.Contains($"{file}: In 1 rows the time is earlier than in the row above.", errors, StringComparison.Ordinal);
        Assert.Contains("Left out: 1 with a repeated time, 1 out of order.", output, StringComparison.Ordinal);
    }

    [Fact]
    public void Decimal_commas_that_were_not_announced_are_explained()
    {
        var file = Written(["Time;Speed;RPM;Throttle;Lap", "0,00;90,1;5345;20;1", "0,02;90,2;5350;20;1", "0,04;90,3;5355;20;1"]);
        var (code, output, errors) = Run(Demo, file);
        Assert.Equal((1, string.Empty), (code, output));
        Assert.Contains("write 'decimal_comma: yes'", errors, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("time: Tme, speed: Speed, engine_speed: RPM", "No column is named 'Tme', which is the car's time (units: s, ms, min, sec). Did you mean 'Time'?")]
    [InlineData("time: Time, speed: Speed in furlongs, engine_speed: RPM", "No column is named 'Speed in furlongs', which is the car's speed (units: km/h, mph, m/s, kph, kmh). The columns are: Time, Speed, RPM, Throttle, Lap.")]
    [InlineData("header_line: 90000, time: Time, speed: Speed, engine_speed: RPM", "The file has no line 90000")]
    public void A_column_that_is_not_there_is_named(string columns, string message)
    {
        var (code, output, errors) = Run(DemoWith($"trace_columns: {{ {columns} }}"), Written(Point()));
        Assert.Equal((1, string.Empty), (code, output));
        Assert.Contains(message, errors, StringComparison.Ordinal);
    }

    [Fact]
    public void Without_columns_or_unit_it_says_what_to_add()
    {
        Assert.Contains("The layout of the traces of Saloon, car 8 is missing. Add 'trace_columns: …'", Run(DemoWith(string.Empty), Written(Point())).Errors, StringComparison.Ordinal);
        using var errors = new StringWriter();
        Assert.Equal(2, Entry.Run(["trace", Written(Point()), Demo, "--unit", "s6-119"], TextWriter.Null, errors));
        Assert.Contains("The book has no unit 's6-119'. Did you mean 's6-118'?", errors.ToString(), StringComparison.Ordinal);
        Assert.Equal(1, Entry.Run(["trace", Path.Combine(_temp.FullName, "none.csv"), Demo, "--unit", "s6-118"], TextWriter.Null, errors));
        Assert.Contains("There is no file", errors.ToString(), StringComparison.Ordinal);
    }

    [Fact]
    public void Other_gears_than_those_in_the_book_are_noticed()
    {
        var book = DemoWith(null, "31/29");
        var (code, output, _) = Run(book, Written(Point()));
        Assert.Equal(0, code);
        Assert.Contains("Gears: not as in the book. With 31/29 (1.069) with 39/10 (3.900) (driven/driver) the engine would turn", output, StringComparison.Ordinal);
        Assert.Contains("33/27 (1.222) with 39/10 (3.900)", output[output.IndexOf("In stock and possible", StringComparison.Ordinal)..], StringComparison.Ordinal);
    }

    [Fact]
    public void Json_has_the_same_with_units()
    {
        using var output = new StringWriter();
        Assert.Equal(0, Entry.Run(["trace", Written(Point()), Demo, "--unit", "s6-118", "--json"], output, TextWriter.Null));
        using var json = JsonDocument.Parse(output.ToString());
        var root = json.RootElement;
        Assert.True(root.GetProperty("gears").GetProperty("as_in_book").GetBoolean());
        Assert.Equal(2, root.GetProperty("laps").GetArrayLength());
        Assert.Equal("km/h", root.GetProperty("top_speed").GetProperty("unit").GetString());
        Assert.Contains(root.GetProperty("shifts").EnumerateArray(), s => s.GetProperty("from").GetInt32() == 3 && s.GetProperty("to").GetInt32() == 2 && s.GetProperty("not_matched").GetInt32() > 0);
        Assert.Equal(s_laps.DistanceM, root.GetProperty("distance").GetProperty("value").GetDouble(), 0.01 * s_laps.DistanceM);
    }

    private static string Demo => Path.Combine(AppContext.BaseDirectory, "demo-data");

    private static IEnumerable<TraceSample> Rows() => s_laps.Recorded(50, 0.02, 5);

    private static IEnumerable<string> Point() => ["Time,Speed,RPM,Throttle,Lap", .. Rows().Select(r => Line(r, r.SpeedMps * 3.6))];

    private static string Line(in TraceSample row, double speed) =>
        string.Create(CultureInfo.InvariantCulture, $"{row.TimeS:0.000},{speed:0.0000},{row.EngineRpm:0.000},{row.Throttle * 100:0.0},{row.Lap:0}");

    private static string Comma(double value, string format) => value.ToString(format, CultureInfo.InvariantCulture).Replace('.', ',');

    private string Written(IEnumerable<string> lines)
    {
        var file = Path.Combine(_temp.FullName, $"{Guid.NewGuid():N}.csv");
        File.WriteAllText(file, string.Join('\n', lines) + "\n", new UTF8Encoding(false));
        return file;
    }

    private static (int Code, string Output, string Errors) Run(string book, string file)
    {
        using var output = new StringWriter();
        using var errors = new StringWriter();
        var code = Entry.Run(["trace", file, book, "--unit", "s6-118"], output, errors);
        return (code, output.ToString(), errors.ToString());
    }

    // The demo with other columns of the car, or another drop pair in the unit.
    private string DemoWith(string? columns, string? pair = null)
    {
        var book = Path.Combine(_temp.FullName, $"{Guid.NewGuid():N}");
        foreach (var file in Directory.EnumerateFiles(Demo, "*", SearchOption.AllDirectories))
        {
            var path = Path.GetRelativePath(Demo, file).Replace('\\', '/');
            var target = Path.Combine(book, path);
            Directory.CreateDirectory(Path.GetDirectoryName(target)!);
            File.Copy(file, target);
            if (path == "cars/saloon-8.yaml" && columns is not null)
            {
                var text = File.ReadAllText(target);
                File.WriteAllText(target, text[..text.IndexOf("trace_columns:", StringComparison.Ordinal)] + columns + "\n");
            }

            if (path == "jobs/2026/0628/job.yaml" && pair is not null)
            {
                File.WriteAllText(target, File.ReadAllText(target).Replace("33/27", pair, StringComparison.Ordinal));
            }
        }

        return book;
    }
}
