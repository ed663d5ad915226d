using System.Globalization;
using System.Runtime.CompilerServices;
using System.Text;
using Layshaft.Site.Html;
using Layshaft.Site.Templates;
using Layshaft.Site.Wording;
using Scriban;
using Scriban.Parsing;
using Scriban.Runtime;
using Scriban.Syntax;

namespace Layshaft.Benchmarks.BigBook;

/// <summary>
/// The floor that pages are held against: our templates rendered by the template library as it comes. It reads members by
/// reflection, builds text, and that text becomes bytes; what is printed is escaped, parts are included, sentences said.
/// </summary>
internal sealed class PlainScriban
{
    private readonly Dictionary<string, Template> _parsed;
    private readonly ScriptObject _builtins;
    private readonly ConditionalWeakTable<RawHtml, string> _markup = [];

    public PlainScriban(TemplateFolders folders, Texts texts)
    {
        _parsed = Directory.EnumerateFiles(folders.Ours, "*.html", SearchOption.AllDirectories)
            .ToDictionary(p => Path.GetRelativePath(folders.Ours, p).Replace('\\', '/'), p => Template.Parse(File.ReadAllText(p).ReplaceLineEndings("\n"), p), StringComparer.Ordinal);
        _builtins = new ScriptObject(StringComparer.Ordinal)
        {
            ["empty"] = EmptyScriptObject.Default,
            ["include"] = new Function((context, caller, values) => new Printed(context.RenderTemplate(_parsed[(string)values[0]!], [.. values.Skip(1)], caller))),
            ["say"] = new Function((_, _, values) => texts.Say(
                (string)values[0]!, values.Count > 1 && values[1] is ScriptObject named ? [.. named.Select(v => (v.Key, v.Value ?? string.Empty))] : [])),
        };
    }

    /// <summary>One page as bytes.</summary>
    public byte[] Render(string template, object page)
    {
        var context = new Context(_builtins, _markup) { LoopLimit = 0, LimitToString = 0, NewLine = "\n", AutoIndent = false };
        var names = new ScriptObject(StringComparer.Ordinal) { ["page"] = page };
        context.PushGlobal(names);
        return Encoding.UTF8.GetBytes(_parsed[template].Render(context));
    }

    private sealed record Printed(string Text);

    private sealed class Context(ScriptObject builtins, ConditionalWeakTable<RawHtml, string> markup) : TemplateContext(builtins)
    {
        public override TemplateContext Write(SourceSpan span, object? textAsObject) => textAsObject switch
        {
            null => this,
            string text => Write(HtmlText.Escape(text)),
            Printed printed => Write(printed.Text),
            RawHtml raw => Write(markup.GetValue(raw, static r => r.Markup)),
            _ => Write(((int)textAsObject).ToString(CultureInfo.InvariantCulture)),
        };
    }

    private sealed class Function(Func<TemplateContext, ScriptNode, ScriptArray, object?> call) : IScriptCustomFunction
    {
        public int RequiredParameterCount => 1;

        public int ParameterCount => 2;

        public ScriptVarParamKind VarParamKind => ScriptVarParamKind.None;

        public Type ReturnType => typeof(object);

        public ScriptParameterInfo GetParameterInfo(int index) => index < 1 ? new(typeof(object), "value0") : new(typeof(object), "value1", null!);

        public object? Invoke(TemplateContext context, ScriptNode? callerContext, ScriptArray arguments, ScriptBlockStatement? blockStatement) =>
            call(context, callerContext!, arguments);

        public ValueTask<object?> InvokeAsync(TemplateContext context, ScriptNode? callerContext, ScriptArray arguments, ScriptBlockStatement? blockStatement) =>
            new(Invoke(context, callerContext, arguments, blockStatement));
    }
}
