using System.Globalization;
using System.Reflection;
using Layshaft.Site.Html;
using Scriban;
using Scriban.Parsing;
using Scriban.Runtime;
using Scriban.Syntax;

namespace Layshaft.Site.Templates;

/// <summary>
/// One rendering. Every value that a template prints passes through <see cref="Write(SourceSpan, object)"/>, which escapes
/// it; the template's own text does not. A typing mistake is an error, never an empty place.
/// </summary>
internal sealed class PageContext : TemplateContext
{
    internal PageContext(ScriptObject builtins, CancellationToken cancel)
        : base(builtins)
    {
        CancellationToken = cancel;
        StrictVariables = true;
        EnableRelaxedMemberAccess = false;
        EnableRelaxedIndexerAccess = false;
        EnableRelaxedTargetAccess = false;
        EnableRelaxedFunctionAccess = false;
        ErrorForStatementFunctionAsExpression = true;
        TryGetMember = UnknownNames.Member;
        TryGetVariable = UnknownNames.Variable;
        MemberFilter = static member => member is PropertyInfo;
        AutoIndent = false;
        NewLine = "\n";

        // The library would cut a page at 1 Mi characters and end it with dots. A page is whole or it is an error.
        LimitToString = 0;
        OutputLimit = 64 << 20;
        OnOutputLimit = ScriptLimitBehavior.Throw;

        // Loops run over lists that our records hold (TemplateRules refuses others), so they end by themselves, and the
        // count of 1,000 that the library gives a whole nest of loops is less than a long history has rows.
        LoopLimit = 0;

        // Files including files: deeper than 20 is a circle.
        RecursiveLimit = 20;
    }

    public override TemplateContext Write(SourceSpan span, object? textAsObject)
    {
        switch (textAsObject)
        {
            case null:
                return this;
            case string text:
                return Write(HtmlText.Escape(text));
            case RawHtml raw:
                foreach (var piece in raw.Pieces)
                {
                    Write(piece);
                }

                return this;
            case int number:
                return Write(number.ToString(CultureInfo.InvariantCulture));
            default:
                throw new ScriptRuntimeException(span,
                    $"A {textAsObject.GetType().Name} is not text. Put it into the page's record as formatted text.");
        }
    }

    protected override IObjectAccessor GetMemberAccessorImpl(object target) =>
        RecordAccessor.For(target) ?? (IObjectAccessor)new ReadOnlyObjectAccessor(base.GetMemberAccessorImpl(target)!);

    protected override IListAccessor GetListAccessorImpl(object target, Type type) =>
        base.GetListAccessorImpl(target, type) is { } lists ? new ReadOnlyListAccessor(lists) : null!;

    public override void Import(SourceSpan span, object objectToImport) =>
        throw new ScriptRuntimeException(span, "Names cannot be imported. Write the full name.");
}
