using System.Collections;
using System.Collections.Concurrent;
using System.Collections.Frozen;
using System.Reflection;
using Scriban;
using Scriban.Parsing;
using Scriban.Runtime;

namespace Layshaft.Site.Templates;

/// <summary>
/// Lets templates read the properties of one type of record, in snake_case, through delegates that are made once for the
/// program: a report asks for thousands of members. Nothing can be written.
/// </summary>
internal sealed class RecordAccessor : IObjectAccessor
{
    private static readonly ConcurrentDictionary<Type, RecordAccessor> Known = new();
    private static readonly object True = true;
    private static readonly object False = false;

    private readonly FrozenDictionary<string, Member> _members;

    private RecordAccessor(Type type) => _members = Properties(type)
        .DistinctBy(p => StandardMemberRenamer.Rename(p), StringComparer.Ordinal)
        .ToFrozenDictionary(p => StandardMemberRenamer.Rename(p), p => new Member(p), StringComparer.Ordinal);

    public Type IndexType => null!;

    public bool HasIndexer => false;

    /// <summary>The accessor of an object; null for one that is not read by its properties.</summary>
    public static RecordAccessor? For(object target) => target is IEnumerable or IScriptObject || target.GetType().IsValueType
        ? null
        : Known.GetOrAdd(target.GetType(), static type => new RecordAccessor(type));

    public int GetMemberCount(TemplateContext context, SourceSpan span, object target) => _members.Count;

    public IEnumerable<string> GetMembers(TemplateContext context, SourceSpan span, object target) => _members.Keys;

    public bool HasMember(TemplateContext context, SourceSpan span, object target, string member) => _members.ContainsKey(member);

    public bool TryGetValue(TemplateContext context, SourceSpan span, object target, string member, out object value)
    {
        if (_members.TryGetValue(member, out var found))
        {
            value = found.Of(target)!;
            return true;
        }

        value = null!;
        return false;
    }

    public bool TryGetItem(TemplateContext context, SourceSpan span, object target, object index, out object value)
    {
        value = null!;
        return false;
    }

    public bool TrySetItem(TemplateContext context, SourceSpan span, object target, object index, object? value) => false;

    public bool TrySetValue(TemplateContext context, SourceSpan span, object target, string member, object? value) => false;

    // The nearest first, as a derived record's own property goes before its base's.
    private static IEnumerable<PropertyInfo> Properties(Type type)
    {
        for (var at = type; at is not null && at != typeof(object); at = at.BaseType)
        {
            foreach (var property in at.GetProperties(BindingFlags.Instance | BindingFlags.Public | BindingFlags.DeclaredOnly))
            {
                if (property.GetMethod is { IsPublic: true } && property.GetIndexParameters().Length == 0)
                {
                    yield return property;
                }
            }
        }
    }

    /// <summary>One property; its delegate is made when it is first asked for.</summary>
    private sealed class Member(PropertyInfo property)
    {
        private Func<object, object?>? _get;

        public object? Of(object target) => (_get ??= Getter(property))(target);

        private static Func<object, object?> Getter(PropertyInfo property)
        {
            var (make, types) = property.PropertyType.IsValueType
                ? (nameof(OfValue), new[] { property.DeclaringType!, property.PropertyType })
                : (nameof(OfReference), [property.DeclaringType!]);
            return (Func<object, object?>)typeof(Member).GetMethod(make, BindingFlags.NonPublic | BindingFlags.Static)!
                .MakeGenericMethod(types).Invoke(null, [property.GetMethod!])!;
        }

        private static Func<object, object?> OfReference<T>(MethodInfo getter)
        {
            var get = getter.CreateDelegate<Func<T, object?>>();
            return target => get((T)target);
        }

        private static Func<object, object?> OfValue<T, TValue>(MethodInfo getter)
        {
            var get = getter.CreateDelegate<Func<T, TValue>>();
            return get is Func<T, bool> yesOrNo
                ? target => yesOrNo((T)target) ? True : False
                : target => get((T)target);
        }
    }
}
