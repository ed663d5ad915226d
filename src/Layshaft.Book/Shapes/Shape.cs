using System.Diagnostics.CodeAnalysis;
using System.Text.Json.Nodes;
using Layshaft.Book.Yaml;

namespace Layshaft.Book.Shapes;

/// <summary>
/// What a value in the book may look like: reads it from a node, and describes itself as JSON Schema, so that the
/// reader and the schema can't drift apart. Immutable.
/// </summary>
/// <typeparam name="T">What reading gives.</typeparam>
public abstract class Shape<T>
{
    /// <summary>What to write, in words with an example: "a length with its unit, such as 0.12 mm".</summary>
    public abstract string Words { get; }

    /// <summary>Reads a node; false when it does not fit, and then the reasons were reported.</summary>
    public abstract bool TryRead(Node node, Reading reading, [MaybeNullWhen(false)] out T value);

    /// <summary>
    /// The shape as JSON Schema. Only keywords that mean the same from draft-07 to draft 2020-12 are used, because the
    /// checkers behind common editors read draft-07 best.
    /// </summary>
    public abstract JsonObject Schema();

    /// <summary>The same shape with another example, of the size that is usual in one field.</summary>
    /// <param name="example">A value that the shape reads, such as "2.55 m".</param>
    /// <exception cref="NotSupportedException">The shape is not that of a single value with an example.</exception>
    public virtual Shape<T> Like(string example) => throw new NotSupportedException("Only a single value has an example.");

    /// <summary>The same shape with one more demand.</summary>
    /// <param name="code">The problem's code when the demand is not met.</param>
    /// <param name="demand">True when the value is acceptable.</param>
    /// <param name="message">What is wrong, given the value.</param>
    public Shape<T> Demand(string code, Func<T, bool> demand, Func<T, string> message) =>
        new DemandShape<T>(this, code, demand, message);
}
