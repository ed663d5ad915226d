using Layshaft.Book.Problems;

namespace Layshaft.Cli.Terminal;

/// <summary>Writes problems, a plain line each, so that editors and other programs can read them.</summary>
internal static class ProblemLines
{
    public static void Write(IEnumerable<Problem> problems, DirectoryInfo book, TextWriter errors) => Write(Of(problems), book, errors);

    /// <summary>Writes problems that are lines already.</summary>
    public static void Write(IEnumerable<string> problems, DirectoryInfo book, TextWriter errors)
    {
        var prefix = Path.GetRelativePath(Directory.GetCurrentDirectory(), book.FullName).Replace('\\', '/');
        foreach (var problem in problems)
        {
            errors.WriteLine(prefix == "." ? problem : $"{prefix}/{problem}");
        }
    }

    /// <summary>The lines without the book's folder; notes with many places are grouped.</summary>
    public static IReadOnlyList<string> Of(IEnumerable<Problem> problems) => [.. ProblemGroup.Of(problems).Select(g => g.ToString())];

    public static string Summary(IReadOnlyCollection<Problem> problems)
    {
        var stops = problems.Count(p => p.Severity != Severity.Notice);
        var notes = problems.Count - stops;
        return (stops, notes) switch
        {
            (0, 0) => "No problems.",
            (0, _) => $"No problems, {Count(notes, "note")}.",
            (_, 0) => $"{Count(stops, "problem")}.",
            _ => $"{Count(stops, "problem")}, {Count(notes, "note")}.",
        };
    }

    private static string Count(int count, string what) => count == 1 ? $"1 {what}" : $"{count} {what}s";
}
