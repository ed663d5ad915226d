using Layshaft.Site.Html;
using Layshaft.Site.Wording;
using Scriban.Runtime;
using Scriban.Syntax;

namespace Layshaft.Site.Templates;

/// <summary>
/// Places the values of a page's record into a template. Everything printed is escaped, save <see cref="RawHtml"/>;
/// nothing can be written back; a mistake comes back as data with its place. Safe to share between threads.
/// </summary>
/// <remarks>
/// A template sees <c>page</c> (the record, members in snake_case), <c>include "name.html" value</c> (the value is
/// <c>$0</c> in there), <c>say "key" {name: value}</c> (a sentence of the texts file) and <c>empty</c>. Lists have <c>.size</c>.
/// </remarks>
public sealed class TemplateEngine
{
    private static readonly TimeSpan DefaultLimit = TimeSpan.FromSeconds(30);

    private readonly TemplateSet _templates;
    private readonly Texts _texts;
    private readonly TimeSpan _limit;
    private readonly ScriptObject _builtins;

    /// <summary>An engine over parsed templates and the words that they say.</summary>
    /// <param name="templates">The templates.</param>
    /// <param name="texts">The words.</param>
    /// <param name="limit">The longest that one page may take, so that a shop's own template cannot hang a publish; 30 s by default.</param>
    public TemplateEngine(TemplateSet templates, Texts texts, TimeSpan? limit = null)
    {
        ArgumentNullException.ThrowIfNull(templates);
        ArgumentNullException.ThrowIfNull(texts);
        _templates = templates;
        _texts = texts;
        _limit = limit ?? DefaultLimit;
        _builtins = new ScriptObject(StringComparer.Ordinal)
        {
            ["empty"] = EmptyScriptObject.Default,
            ["include"] = new TemplateFunction(1, 2, Include),
            ["say"] = new TemplateFunction(1, 2, Say),
        };
        _builtins.IsReadOnly = true;
    }

    /// <summary>Renders one page.</summary>
    /// <param name="template">The template's name, for instance <c>job.html</c>.</param>
    /// <param name="page">The page's record: immutable, with text, <see cref="RawHtml"/>, conditions, records and lists.</param>
    /// <param name="cancel">Stops the work.</param>
    /// <exception cref="OperationCanceledException"><paramref name="cancel"/> asked for it.</exception>
    public RenderResult Render(string template, object page, CancellationToken cancel = default)
    {
        ArgumentNullException.ThrowIfNull(template);
        ArgumentNullException.ThrowIfNull(page);
        if (_templates.Problems.Count > 0)
        {
            return new(null, _templates.Problems);
        }

        if (!_templates.TryGet(template, out var parsed))
        {
            return Failed(new(template, 0, 0, "There is no template with this name."));
        }

        using var limited = CancellationTokenSource.CreateLinkedTokenSource(cancel);
        limited.CancelAfter(_limit);
        var context = new PageContext(_builtins, limited.Token);
        var names = new ScriptObject(StringComparer.Ordinal);
        names.SetValue("page", page, readOnly: true);
        context.PushGlobal(names);
        using var output = new Utf8Output();
        context.PushOutput(output);
        try
        {
            parsed.Render(context);
            return new(output.ToArray(), []);
        }
        catch (ScriptAbortException e)
        {
            cancel.ThrowIfCancellationRequested();
            return Failed(At(e.Span, template, $"This page took longer than {_limit.TotalSeconds:0.###} s and was stopped."));
        }
        catch (ScriptRuntimeException e)
        {
            return Failed(At(e.Span, template, e.OriginalMessage));
        }
    }

    private static RenderResult Failed(TemplateProblem problem) => new(null, [problem]);

    private static TemplateProblem At(Scriban.Parsing.SourceSpan span, string template, string message) =>
        new(span.FileName ?? template, span.Start.Line + 1, span.Start.Column + 1, message);

    private RawHtml? Include(Scriban.TemplateContext context, ScriptNode caller, ScriptArray values)
    {
        var name = values[0] as string
            ?? throw new ScriptRuntimeException(caller.Span, "'include' needs the template's name in quotes.");
        if (!_templates.TryGet(name, out var part))
        {
            throw new ScriptRuntimeException(caller.Span, UnknownNames.Sentence($"There is no template '{name}'.", name, _templates.Names));
        }

        context.EnterRecursive(caller);
        try
        {
            ScriptArray handedOn = [.. values.Skip(1)];
            if (IsWholeStatement(caller))
            {
                // Printed where it stands: the part prints there itself.
                Print(context, part, handedOn);
                return null;
            }

            // What the part printed was escaped as it was printed: it is markup now and must not be escaped again.
            return new RawHtml(context.RenderTemplate(part, handedOn, caller));
        }
        finally
        {
            context.ExitRecursive(caller);
        }
    }

    private static bool IsWholeStatement(ScriptNode caller) =>
        caller is ScriptFunctionCall { Parent: ScriptExpressionStatement } call && !call.Arguments.Any(a => a is ScriptNamedArgument);

    private static void Print(Scriban.TemplateContext context, Scriban.Template part, ScriptArray values)
    {
        context.PushLocal();
        context.PushSourceFile(part.SourceFilePath!);
        try
        {
            context.SetValue(ScriptVariable.Arguments, values, asReadOnly: true, force: true);
            if (context.Evaluate(part.Page!) is { } last)
            {
                context.Write(part.Page!.Span, last);
            }
        }
        finally
        {
            context.PopSourceFile();
            context.PopLocal();
        }
    }

    private string Say(Scriban.TemplateContext context, ScriptNode caller, ScriptArray values)
    {
        var key = values[0] as string ?? throw new ScriptRuntimeException(caller.Span, "'say' needs the text's key in quotes.");
        var named = values.Count > 1 ? values[1] as ScriptObject : null;
        try
        {
            return _texts.Say(key, named is null ? [] : [.. named.Select(v => (v.Key, v.Value ?? string.Empty))]);
        }
        catch (KeyNotFoundException e)
        {
            throw new ScriptRuntimeException(caller.Span, UnknownNames.Sentence(e.Message, key, _texts.Keys), e);
        }
        catch (ArgumentException e)
        {
            throw new ScriptRuntimeException(caller.Span, e.Message, e);
        }
    }
}
