using Scriban;
using Scriban.Parsing;
using Scriban.Runtime;

namespace Layshaft.Site.Templates;

/// <summary>Lets a template read an object's members; what it writes is refused.</summary>
internal sealed class ReadOnlyObjectAccessor(IObjectAccessor inner) : IObjectAccessor
{
    public Type IndexType => inner.IndexType!;

    public bool HasIndexer => inner.HasIndexer;

    public int GetMemberCount(TemplateContext context, SourceSpan span, object target) =>
        inner.GetMemberCount(context, span, target);

    public IEnumerable<string> GetMembers(TemplateContext context, SourceSpan span, object target) =>
        inner.GetMembers(context, span, target);

    public bool HasMember(TemplateContext context, SourceSpan span, object target, string member) =>
        inner.HasMember(context, span, target, member);

    public bool TryGetItem(TemplateContext context, SourceSpan span, object target, object index, out object value) =>
        inner.TryGetItem(context, span, target, index, out value!);

    public bool TryGetValue(TemplateContext context, SourceSpan span, object target, string member, out object value) =>
        inner.TryGetValue(context, span, target, member, out value!);

    public bool TrySetItem(TemplateContext context, SourceSpan span, object target, object index, object? value) => false;

    public bool TrySetValue(TemplateContext context, SourceSpan span, object target, string member, object? value) => false;
}

/// <summary>Lets a template read a list; what it writes is refused.</summary>
internal sealed class ReadOnlyListAccessor(IListAccessor inner) : IListAccessor
{
    public int GetLength(TemplateContext context, SourceSpan span, object target) => inner.GetLength(context, span, target);

    public object GetValue(TemplateContext context, SourceSpan span, object target, int index) =>
        inner.GetValue(context, span, target, index)!;

    public void SetValue(TemplateContext context, SourceSpan span, object target, int index, object? value) =>
        throw new Scriban.Syntax.ScriptRuntimeException(span, "A template cannot change a list.");
}
