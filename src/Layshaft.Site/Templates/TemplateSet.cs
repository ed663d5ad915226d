using System.Collections.Frozen;
using System.Security.Cryptography;
using System.Text;
using Scriban;
using Scriban.Parsing;

namespace Layshaft.Site.Templates;

/// <summary>
/// All templates, read and parsed once. What a page is made from cannot change while a site is being made, and nothing
/// is looked up on disk by a name that a template gives. Immutable; threads share it.
/// </summary>
public sealed class TemplateSet
{
    private readonly FrozenDictionary<string, Template> _parsed;

    private TemplateSet(FrozenDictionary<string, Template> parsed, IReadOnlyList<TemplateProblem> problems, string fingerprint)
    {
        _parsed = parsed;
        Problems = problems;
        Fingerprint = fingerprint;
    }

    /// <summary>What is wrong in any template, in order of file, line and column; empty when all can be used.</summary>
    public IReadOnlyList<TemplateProblem> Problems { get; }

    /// <summary>SHA-256 over names and texts, in lower-case hexadecimal: pages made with other templates are other pages.</summary>
    public string Fingerprint { get; }

    /// <summary>The templates' names, in order.</summary>
    public IReadOnlyList<string> Names => [.. _parsed.Keys.Order(StringComparer.Ordinal)];

    /// <summary>Reads <c>**/*.html</c> of both folders and parses it.</summary>
    /// <param name="folders">Where to read.</param>
    public static TemplateSet Load(TemplateFolders folders)
    {
        ArgumentNullException.ThrowIfNull(folders);
        var problems = new List<TemplateProblem>();
        return Parse(TemplateFiles.Read(folders, "*.html", problems), problems);
    }

    /// <summary>Parses templates given as texts.</summary>
    /// <param name="files">Name to text.</param>
    public static TemplateSet Parse(IReadOnlyDictionary<string, string> files) => Parse(files, []);

    internal bool TryGet(string name, out Template template) => _parsed.TryGetValue(name, out template!);

    private static TemplateSet Parse(IReadOnlyDictionary<string, string> files, List<TemplateProblem> problems)
    {
        ArgumentNullException.ThrowIfNull(files);
        var parsed = new Dictionary<string, Template>(StringComparer.Ordinal);
        using var hash = IncrementalHash.CreateHash(HashAlgorithmName.SHA256);
        foreach (var (name, text) in files.OrderBy(f => f.Key, StringComparer.Ordinal))
        {
            hash.AppendData(Encoding.UTF8.GetBytes($"{name}\0{text}\0"));
            if (TemplateNumbers.Endless(text) is { } at)
            {
                var before = text.AsSpan(0, at);
                problems.Add(new TemplateProblem(name, before.Count('\n') + 1, at - before.LastIndexOf('\n'), "This number is too large for a template. Templates compute nothing."));
                continue;
            }

            var template = Template.Parse(text, name);
            problems.AddRange(template.Messages.Where(m => m.Type == ParserMessageType.Error).Select(m =>
                new TemplateProblem(name, m.Span.Start.Line + 1, m.Span.Start.Column + 1, m.Message)));
            if (!template.HasErrors)
            {
                problems.AddRange(TemplateRules.Check(name, template.Page!));
                parsed[name] = template;
            }
        }

        var ordered = problems.OrderBy(p => p.File, StringComparer.Ordinal).ThenBy(p => p.Line).ThenBy(p => p.Column);
        return new(
            parsed.ToFrozenDictionary(StringComparer.Ordinal), [.. ordered], Convert.ToHexStringLower(hash.GetHashAndReset()));
    }
}
