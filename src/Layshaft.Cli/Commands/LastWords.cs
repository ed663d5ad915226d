using Layshaft.Cli.Terminal;
using Layshaft.Site.Pages;

namespace Layshaft.Cli.Commands;

/// <summary>The closing report of a publish, kept so that the next one can repeat it if nothing has changed.</summary>
/// <param name="Exit">Its exit code.</param>
/// <param name="Summary">How many problems and notes there were.</param>
/// <param name="Problems">Their lines, without the book's folder.</param>
/// <param name="ForeignFiles">Files in the site that Layshaft did not create.</param>
internal sealed record LastWords(int Exit, string Summary, IReadOnlyList<string> Problems, IReadOnlyList<string> ForeignFiles)
{
    public static LastWords Read(IReadOnlyList<string> lines) => new(
        int.Parse(lines[0], System.Globalization.CultureInfo.InvariantCulture),
        lines[1],
        [.. lines.Skip(2).Where(l => l[0] == '!').Select(l => l[1..])],
        [.. lines.Skip(2).Where(l => l[0] == '?').Select(l => l[1..])]);

    public IReadOnlyList<string> ToLines() =>
    [
        Exit.ToString(System.Globalization.CultureInfo.InvariantCulture),
        Summary,
        .. Problems.Select(p => "!" + p),
        .. ForeignFiles.Select(s => "?" + s),
    ];

    public int Say(DirectoryInfo book, DirectoryInfo folder, TextWriter output, TextWriter errors, string what)
    {
        ProblemLines.Write(Problems, book, errors);
        foreach (var line in UploadWords.Of(folder))
        {
            output.WriteLine(line);
        }

        foreach (var file in ForeignFiles)
        {
            output.WriteLine($"Kept, not created by Layshaft: {file}");
        }

        output.WriteLine(what);
        output.WriteLine(Summary);
        output.WriteLine($"Open {Path.Combine(folder.ToString(), Addresses.ShopIndex)}");
        return Exit;
    }
}
