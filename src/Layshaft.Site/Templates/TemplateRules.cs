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
        ScriptWhileStatement => "`while` may never end; use `for` over a list.",
        ScriptTableRowStatement => "`tablerow` is not used here; write the table's rows with `for`.",
        ScriptCaptureStatement => "`capture` turns markup into text, which is then escaped; use `include`.",
        ScriptWrapStatement or ScriptFunction or ScriptAnonymousFunction =>
            "Functions are not written in templates; put the part in a file of its own and `include` it.",
        ScriptWithStatement or ScriptImportStatement => "`with` and `import` hide where a name comes from; write the whole name.",
        ScriptThisExpression => "`this` is not used here; write the value's name.",
        ScriptIncrementDecrementExpression => "Templates compute nothing; let the page's record hold the result.",
        ScriptUnaryExpression { Operator: not (ScriptUnaryOperator.Not or ScriptUnaryOperator.None) } =>
            "Templates compute nothing; only `!` is used before a value.",
        ScriptBinaryExpression { Operator: var op } when !Allowed(op) =>
            "Templates compute nothing; let the page's record hold the result.",
        ScriptAssignExpression { Target: not ScriptVariable } =>
            "A value's member is not changed in a template; give the result a name of its own.",
        ScriptAssignExpression { EqualToken.TokenType: not Scriban.Parsing.TokenType.Equal } =>
            "Templates compute nothing; let the page's record hold the result.",
        _ => null,
    };

    private static bool Allowed(ScriptBinaryOperator op) => op
        is ScriptBinaryOperator.None or ScriptBinaryOperator.And or ScriptBinaryOperator.Or
        or ScriptBinaryOperator.EmptyCoalescing
        or ScriptBinaryOperator.CompareEqual or ScriptBinaryOperator.CompareNotEqual
        or ScriptBinaryOperator.CompareLess or ScriptBinaryOperator.CompareLessOrEqual
        or ScriptBinaryOperator.CompareGreater or ScriptBinaryOperator.CompareGreaterOrEqual;
}
