using System.Text;
using Layshaft.Book.Places;
using Layshaft.Book.Problems;

namespace Layshaft.Book.Yaml;

/// <summary>Turns a file's bytes into text, refusing what could hide a meaning.</summary>
public static class YamlText
{
    /// <summary>The largest file that is read, in bytes: some forty times the longest job that we know.</summary>
    public const int LargestFile = 1024 * 1024;

    private static readonly UTF8Encoding Strict = new(false, throwOnInvalidBytes: true);

    /// <summary>The text of a file, or null when it can't be used; then the reason was added to the problems.</summary>
    public static string? Decode(ReadOnlySpan<byte> bytes, string file, ProblemList problems)
    {
        ArgumentNullException.ThrowIfNull(problems);
        if (bytes.Length > LargestFile)
        {
            problems.Add("file-too-large", Place.WholeFile(file), "This file is larger than 1 MiB.", "Split it, or remove what does not belong in it.");
            return null;
        }

        if (bytes.StartsWith(Encoding.UTF8.Preamble))
        {
            bytes = bytes[Encoding.UTF8.Preamble.Length..];
        }

        string text;
        try
        {
            text = Strict.GetString(bytes);
        }
        catch (DecoderFallbackException bad)
        {
            var before = Encoding.UTF8.GetString(bytes[..bad.Index]);
            problems.Add("not-utf8", PlaceAt(file, before, before.Length), "This byte is not valid UTF-8.", "Save the file as UTF-8.");
            return null;
        }

        for (var i = 0; i < text.Length; i++)
        {
            if (Hides(text[i]))
            {
                problems.Add(
                    "hidden-character",
                    PlaceAt(file, text, i),
                    $"There is an invisible character here (U+{(int)text[i]:X4}).",
                    "Delete it and type the text again.");
                return null;
            }
        }

        return text;
    }

    // Control characters other than tab and line ends, and those that turn the reading direction: what is read
    // would not be what is seen.
    private static bool Hides(char c) =>
        (char.IsControl(c) && c is not ('\t' or '\n' or '\r'))
        || c is '\u061C' or '\u200E' or '\u200F' or (>= '\u202A' and <= '\u202E') or (>= '\u2066' and <= '\u2069') or '\uFEFF' or '\u2028' or '\u2029';

    /// <summary>What a text holds that may not stand in a file: a hidden character, or half of a pair; null for nothing.</summary>
    internal static int? HiddenIn(string text)
    {
        for (var i = 0; i < text.Length; i++)
        {
            if (i + 1 < text.Length && char.IsSurrogatePair(text[i], text[i + 1]))
            {
                i++;
            }
            else if (char.IsSurrogate(text[i]) || Hides(text[i]))
            {
                return text[i];
            }
        }

        return null;
    }

    private static Place PlaceAt(string file, string text, int index)
    {
        var line = 1;
        var column = 1;
        for (var i = 0; i < index; i++)
        {
            if (text[i] == '\n')
            {
                line++;
                column = 1;
            }
            else
            {
                column++;
            }
        }

        return new Place(file, line, column);
    }
}
