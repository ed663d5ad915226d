using System.Diagnostics.CodeAnalysis;
using System.Text.Json.Nodes;
using Layshaft.Book.Yaml;

namespace Layshaft.Book.Shapes;

internal sealed class DemandShape<T>(Shape<T> inner, string code, Func<T, bool> demand, Func<T, string> message) : Shape<T>
{
    public override string Words => inner.Words;

    public override bool TryRead(Node node, Reading reading, [MaybeNullWhen(false)] out T value)
    {
        if (!inner.TryRead(node, reading, out value))
        {
            return false;
        }

        if (demand(value))
        {
            return true;
        }

        reading.Report(node, code, message(value));
        return false;
    }

    public override Shape<T> Like(string example) => new DemandShape<T>(inner.Like(example), code, demand, message);

    public override JsonObject Schema() => inner.Schema();
}
