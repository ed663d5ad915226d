using CsvHelper;
using Layshaft.Book.Places;
using Layshaft.Book.Problems;
using Layshaft.Book.Reading;
using Layshaft.Book.Yaml;
using UnitsNet;

namespace Layshaft.Site.Assessment.Gearing;

/// <summary>A point of a torque curve with the line that it was read from.</summary>
/// <param name="Place">Where it stands.</param>
/// <param name="At">Engine speed.</param>
/// <param name="Torque">Torque at full load.</param>
internal sealed record PlacedPoint(Place Place, RotationalSpeed At, Torque Torque);

/// <summary>Reads a dyno run: a CSV file with the columns <c>rpm</c> and <c>torque</c> (N·m), others are passed over.</summary>
internal static class CurveFile
{
    private const int MostRows = 5000;
    private const int LargestFile = 1 << 20;

    /// <summary>The points; null if the file could not be read, which the problems report.</summary>
    public static IReadOnlyList<PlacedPoint>? Read(IBookFiles files, string path, ProblemList problems)
    {
        if (files.LengthOf(path) > LargestFile)
        {
            problems.Add("curve-file", Place.WholeFile(path), "This file is too large for a torque curve.", "Keep one full-load run of a few hundred lines.");
            return null;
        }

        if (YamlText.Decode(files.Read(path), path, problems) is not { } text)
        {
            return null;
        }

        var before = problems.Count;
        var points = Rows(text, path, problems);
        return problems.Count == before ? points : null;
    }

    private static List<PlacedPoint> Rows(string text, string path, ProblemList problems)
    {
        var options = new CsvReaderOptions
        {
            TrimWhitespace = true,
            CommentPrefix = '#',
            TrackLineNumbers = true,
            AllowLineBreaksInQuotes = false,
        };
        using var csv = CsvReader.FromText(text, options);
        var points = new List<PlacedPoint>();
        if (!csv.TryGetFieldIndex("rpm", out var rpmColumn) || !csv.TryGetFieldIndex("torque", out var torqueColumn))
        {
            problems.Add("curve-file", new Place(path, 1, 1), "The first line does not name the columns 'rpm' and 'torque'.", "Write 'rpm,torque' in the first line; torque is in N·m.");
            return points;
        }

        while (csv.Read())
        {
            var place = new Place(path, (int)csv.LineNumber, 1);
            if (points.Count == MostRows)
            {
                problems.Add("curve-file", place, $"The curve has more than {MostRows} points.", "Keep one full-load run.");
                return points;
            }

            var rpm = Number(csv.GetString(rpmColumn), "rpm", place, problems);
            var torque = Number(csv.GetString(torqueColumn), "torque", place, problems);
            if (rpm is { } speed && torque is { } moment)
            {
                points.Add(new PlacedPoint(place, RotationalSpeed.FromRevolutionsPerMinute(speed), Torque.FromNewtonMeters(moment)));
            }
        }

        return points;
    }

    private static double? Number(string? field, string column, Place place, ProblemList problems)
    {
        var parsed = Book.Values.Figure.Parse(field ?? string.Empty);
        if (parsed.Wrong is null)
        {
            return parsed.Value;
        }

        problems.Add("curve-file", place, $"{column}: {(string.IsNullOrEmpty(field) ? "the value is missing." : parsed.Wrong)}", "Write a plain number such as 7400 or 212.5.");
        return null;
    }
}
