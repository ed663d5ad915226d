using Scriban;
using Scriban.Runtime;
using Scriban.Syntax;

namespace Layshaft.Site.Templates;

/// <summary>A function that templates may call with positional values.</summary>
/// <param name="required">How many values a call must give.</param>
/// <param name="most">How many it may give.</param>
/// <param name="call">Works out the result.</param>
internal sealed class TemplateFunction(
    int required, int most, Func<TemplateContext, ScriptNode, ScriptArray, object?> call) : IScriptCustomFunction
{
    public int RequiredParameterCount => required;

    public int ParameterCount => most;

    public ScriptVarParamKind VarParamKind => ScriptVarParamKind.None;

    public Type ReturnType => typeof(object);

    public ScriptParameterInfo GetParameterInfo(int index) =>
        index < required ? new(typeof(object), $"value{index}") : new(typeof(object), $"value{index}", null!);

    public object? Invoke(
        TemplateContext context, ScriptNode? callerContext, ScriptArray arguments, ScriptBlockStatement? blockStatement) =>
        call(context, callerContext ?? new ScriptPage(), arguments);

    public ValueTask<object?> InvokeAsync(
        TemplateContext context, ScriptNode? callerContext, ScriptArray arguments, ScriptBlockStatement? blockStatement) =>
        new(Invoke(context, callerContext, arguments, blockStatement));
}
