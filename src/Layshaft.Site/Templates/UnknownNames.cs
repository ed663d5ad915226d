using System.Collections;
using Layshaft.Book.Problems;
using Scriban;
using Scriban.Parsing;
using Scriban.Syntax;

namespace Layshaft.Site.Templates;

/// <summary>Says of a name that a template mistypes what it was probably meant to be.</summary>
internal static class UnknownNames
{
    private static readonly string[] s_list = ["size", "empty?"];
    private static readonly string[] s_globals = ["page", "include", "say", "empty"];

    internal static bool Member(TemplateContext context, SourceSpan span, object target, string member, out object? value)
    {
        value = null;
        string[] known = target switch
        {
            null or string => [],
            IList => s_list,
            _ => [.. context.GetMemberAccessor(target).GetMembers(context, span, target).Order(StringComparer.Ordinal)],
        };
        throw new ScriptRuntimeException(span, Sentence($"There is no '{member}' in this value.", member, known));
    }

    internal static bool Variable(TemplateContext context, SourceSpan span, ScriptVariable variable, out object? value)
    {
        value = null;
        throw new ScriptRuntimeException(span, Sentence($"There is no '{variable}' here.", variable.Name, s_globals));
    }

    internal static string Sentence(string what, string name, IReadOnlyCollection<string> known) => $"{what} {NearestWord.Advice(name, known)}".TrimEnd();
}
