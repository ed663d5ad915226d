using System.Text.RegularExpressions;
using Layshaft.Book.Places;
using Layshaft.Book.Problems;

namespace Layshaft.Book.Yaml;

/// <summary>A line that was meant as <c>field: value</c> and is not one to the parser: no space after the colon, or another character for it.</summary>
internal static partial class FieldSlip
{
    /// <summary>Explains a piece of text, if it is such a line.</summary>
    /// <param name="text">The text, from the field's name on.</param>
    /// <param name="at">Where the text begins.</param>
    public static Problem? Explain(string text, Place at)
    {
        if (Field().Match(text) is not { Success: true } field)
        {
            return null;
        }

        var (name, sign, value) = (field.Groups["name"].Value, field.Groups["sign"], Short(field.Groups["value"].Value));
        var meant = $"Write '{name}: {(value.Length == 0 ? "…" : LookAlike.Replace(value).Trim())}'.";
        var signAt = at with { Column = at.Column + sign.Index };
        if (sign.Value == "=")
        {
            return new Problem("equals-sign", signAt, $"'{name}' is followed by '=', but a field needs a colon.", meant);
        }

        if (LookAlike.In(text.AsSpan(0, sign.Index + sign.Length)) is { } wide)
        {
            return new Problem("look-alike", at with { Column = at.Column + wide.Index }, wide.Message, meant);
        }

        return field.Groups["space"].Value switch
        {
            "" when value.Length > 0 => new Problem("tight-colon", signAt, $"The colon after '{name}' has no space after it.", meant),
            [> '~', ..] space => new Problem("look-alike", signAt with { Column = signAt.Column + 1 }, LookAlike.In(space)!.Value.Message, meant),
            _ => null,
        };
    }

    private static string Short(string text) => text.Length > 60 ? text[..60] + "…" : text;

    [GeneratedRegex(@"^(?<name>[A-Za-z][A-Za-z0-9_-]*)[ \u00A0\u2000-\u200A\u202F\u3000\u200B-\u200D\u2060\u00AD]*(?<sign>[:=\uFF1A\uFF1D\uFE55])(?<space>[ \t\u00A0\u2000-\u200A\u202F\u3000\u200B-\u200D\u2060\u00AD]*)(?<value>.*?)\r?$", RegexOptions.CultureInvariant)]
    private static partial Regex Field();
}
