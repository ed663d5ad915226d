using System.Text;
using Layshaft.Book.Reading;

namespace Layshaft.Site.Templates;

/// <summary>
/// Reads every file of one kind below a template folder, once. Links are not followed, so that a folder cannot make the
/// program read outside it.
/// </summary>
internal static class TemplateFiles
{
    /// <summary>Larger than any template has a reason to be.</summary>
    internal const long LargestBytes = 1 << 20;

    private static readonly EnumerationOptions Walk = new()
    {
        AttributesToSkip = FileAttributes.ReparsePoint,
        MatchCasing = MatchCasing.CaseSensitive,
        RecurseSubdirectories = true,
        MaxRecursionDepth = 8,
    };

    /// <summary>Names (forward slashes) with texts, ours first and then the shop's over it.</summary>
    internal static SortedDictionary<string, string> Read(
        TemplateFolders folders, string pattern, ICollection<TemplateProblem> problems)
    {
        var files = new SortedDictionary<string, string>(StringComparer.Ordinal);
        ReadFolder(folders.Ours, pattern, files, problems);
        if (folders.Shop is not null)
        {
            ReadFolder(folders.Shop, pattern, files, problems);
        }

        return files;
    }

    private static void ReadFolder(
        string folder, string pattern, SortedDictionary<string, string> files, ICollection<TemplateProblem> problems)
    {
        if (!Directory.Exists(folder))
        {
            problems.Add(new(folder, 0, 0, "This template folder does not exist. Name another folder."));
            return;
        }

        foreach (var path in Directory.EnumerateFiles(folder, pattern, Walk).Order(StringComparer.Ordinal))
        {
            var name = Path.GetRelativePath(folder, path).Replace('\\', '/');
            if (ReadFile(path, name, problems) is { } text)
            {
                files[name] = text;
            }
        }
    }

    private static string? ReadFile(string path, string name, ICollection<TemplateProblem> problems)
    {
        try
        {
            var length = new FileInfo(path).Length;
            if (length == 0)
            {
                // Not opened: a pipe says that it holds nothing, too, and might never end. A texts file tells that it is empty itself.
                if (!name.EndsWith(".html", StringComparison.Ordinal))
                {
                    return string.Empty;
                }

                problems.Add(new(name, 0, 0, "This file is empty. Remove it, or write a comment into it: {{# empty #}}."));
                return null;
            }

            if (length > LargestBytes)
            {
                problems.Add(new(name, 0, 0, "This file is larger than 1 MiB. Split it."));
                return null;
            }

            using var text = new StreamReader(RegularFile.Open(path), new UTF8Encoding(false, throwOnInvalidBytes: true));
            return text.ReadToEnd().ReplaceLineEndings("\n");
        }
        catch (Exception e) when (e is IOException or UnauthorizedAccessException)
        {
            problems.Add(new(name, 0, 0, $"This file cannot be read: {e.Message}"));
        }
        catch (DecoderFallbackException)
        {
            problems.Add(new(name, 0, 0, "This file is not UTF-8 text. Save it as UTF-8."));
        }

        return null;
    }
}
