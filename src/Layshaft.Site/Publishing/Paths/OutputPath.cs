using System.Buffers;

namespace Layshaft.Site.Publishing;

/// <summary>Which relative paths a site may have: those that every system and every web server reads the same way.</summary>
/// <remarks>
/// Only ASCII letters, digits, <c>-</c>, <c>_</c> and <c>.</c>, so that no two differ only by Unicode form and none needs
/// escaping in an address. No part begins or ends with a point (so no <c>..</c> and nothing hidden), none is a device of
/// Windows, and the whole leaves room below the 260 characters that some of its programs still allow.
/// </remarks>
public static class OutputPath
{
    /// <summary>The most characters that a path may have.</summary>
    public const int Longest = 180;

    private static readonly SearchValues<char> Allowed =
        SearchValues.Create("ABCDEFGHIJKLMNOPQRSTUVWXYZabcdefghijklmnopqrstuvwxyz0123456789-_.");

    /// <summary>What is wrong with a path, or null.</summary>
    /// <param name="path">A path within the site, with forward slashes.</param>
    public static string? ProblemWith(string path)
    {
        ArgumentNullException.ThrowIfNull(path);
        if (path.Length is 0 or > Longest)
        {
            return $"A path has 1 to {Longest} characters.";
        }

        foreach (var range in path.AsSpan().Split('/'))
        {
            var part = path.AsSpan(range);
            if (part.Length == 0)
            {
                return "A path is relative, with one slash between its parts.";
            }

            if (part.ContainsAnyExcept(Allowed))
            {
                return "A path has only letters a to z, digits, '-', '_' and '.' between its slashes.";
            }

            if (part[0] == '.' || part[^1] == '.')
            {
                return "No part of a path begins or ends with a dot.";
            }

            if (IsDevice(part))
            {
                return $"'{part}' is a device name on Windows. Choose another name.";
            }
        }

        return null;
    }

    /// <summary>The folders above a path, nearest first.</summary>
    internal static IEnumerable<string> FoldersAbove(string path)
    {
        for (var slash = path.LastIndexOf('/'); slash > 0; slash = path.LastIndexOf('/', slash - 1))
        {
            yield return path[..slash];
        }
    }

    private static bool IsDevice(ReadOnlySpan<char> part)
    {
        var name = part.IndexOf('.') is >= 0 and var point ? part[..point] : part;
        return IsOneOf(name, "CON", "PRN", "AUX", "NUL") || (name.Length == 4 && IsOneOf(name[..3], "COM", "LPT") && char.IsAsciiDigit(name[3]));
    }

    private static bool IsOneOf(ReadOnlySpan<char> name, params ReadOnlySpan<string> words)
    {
        foreach (var word in words)
        {
            if (name.Equals(word, StringComparison.OrdinalIgnoreCase))
            {
                return true;
            }
        }

        return false;
    }
}
