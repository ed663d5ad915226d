using Scriban.Syntax;

namespace Layshaft.Site.Templates;

/// <summary>
/// What a template may contain: text, values, <c>include</c>, <c>say</c>, conditions, loops over lists, and names given to
/// values. Templates place values and compute none; they have no loop without an end and nothing that multiplies.
/// </summary>
internal static class TemplateRules
{
    internal static IEnumerable<TemplateProblem> Check(string file, ScriptNode root)
    {
        var open = new Stack<ScriptNode>([root]);
        while (open.TryPop(out var node))
        {
            if (Refusal(node) is { } why)
            {
                yield return new(file, node.Span.Start.Line + 1, node.Span.Start.Column + 1, why);
            }

            foreach (var child in node.Children)
            {
                if (child is not null)
                {
                    open.Push(child);
                }
            }
        }
    }

    private static string? Refusal(ScriptNode node) => node switch
    {
        ScriptWhileStatement => "'while' may never end. Write 'for' over a list.",
        ScriptTableRowStatement => "'tablerow' is not allowed. Write the table's rows with 'for'.",
        ScriptCaptureStatement => "'capture' turns markup into text, which is then escaped. Write 'include'.",
        ScriptWrapStatement or ScriptFunction or ScriptAnonymousFunction =>
            "Templates cannot define functions. Put the section into its own file and write 'include'.",
        ScriptWithStatement or ScriptImportStatement => "'with' and 'import' hide where a name comes from. Write the full name.",
        ScriptThisExpression => "'this' is not allowed. Write the value's name.",
        ScriptIncrementDecrementExpression => "Templates compute nothing. Put the result into the page's record.",
        ScriptUnaryExpression { Operator: not (ScriptUnaryOperator.Not or ScriptUnaryOperator.None) } =>
            "Templates compute nothing. Write only '!' before a value.",
        ScriptBinaryExpression { Operator: var op } when !Allowed(op) =>
            "Templates compute nothing. Put the result into the page's record.",
        ScriptAssignExpression { Target: not ScriptVariable } =>
            "A template cannot change a value's member. Give the result its own name.",
        ScriptAssignExpression { EqualToken.TokenType: not Scriban.Parsing.TokenType.Equal } =>
            "Templates compute nothing. Put the result into the page's record.",
        _ => null,
    };

    private static bool Allowed(ScriptBinaryOperator op) => op
        is ScriptBinaryOperator.None or ScriptBinaryOperator.And or ScriptBinaryOperator.Or
        or ScriptBinaryOperator.EmptyCoalescing
        or ScriptBinaryOperator.CompareEqual or ScriptBinaryOperator.CompareNotEqual
        or ScriptBinaryOperator.CompareLess or ScriptBinaryOperator.CompareLessOrEqual
        or ScriptBinaryOperator.CompareGreater or ScriptBinaryOperator.CompareGreaterOrEqual;
}
