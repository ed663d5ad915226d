namespace Layshaft.Book.Yaml;

/// <summary>A piece of a YAML file with the place at which it begins. Immutable.</summary>
/// <param name="Line">Counted from 1.</param>
/// <param name="Column">Counted from 1, in characters.</param>
public abstract record Node(int Line, int Column)
{
    /// <summary>What this is, in words for a message.</summary>
    public abstract string Words { get; }
}

/// <summary>A single value, exactly as written: nothing is turned into a number, a date or a truth value here.</summary>
/// <param name="Text">The text after YAML's quoting is taken off.</param>
/// <param name="Plain">Whether it was written without quotes.</param>
/// <param name="Line">Counted from 1.</param>
/// <param name="Column">Counted from 1.</param>
/// <param name="Cut">Whether a comment begins one space behind it: in a free text that '#' is more likely part of the text.</param>
public sealed record ScalarNode(string Text, bool Plain, int Line, int Column, bool Cut = false) : Node(Line, Column)
{
    /// <summary>Whether nothing was written, or YAML's words for nothing.</summary>
    public bool IsNothing => Plain && Text is "" or "~" or "null" or "Null" or "NULL" && Plain;

    /// <summary>What is wrong where nothing is written: a '#' may have taken the value.</summary>
    internal string NothingWritten => Cut ? "The value is missing: a '#' begins a comment unless it is in quotes." : "The value is missing.";

    /// <inheritdoc/>
    public override string Words => IsNothing ? "nothing" : $"'{Shown}'";

    /// <summary>The text, shortened for a message and free of control characters.</summary>
    public string Shown
    {
        get
        {
            var line = string.Concat(Text.Take(61).Select(c => char.IsControl(c) ? ' ' : c));
            return line.Length > 60 ? line[..60] + "…" : line;
        }
    }
}

/// <summary>A list.</summary>
/// <param name="Items">Its items in order.</param>
/// <param name="Line">Counted from 1.</param>
/// <param name="Column">Counted from 1.</param>
public sealed record ListNode(IReadOnlyList<Node> Items, int Line, int Column) : Node(Line, Column)
{
    /// <inheritdoc/>
    public override string Words => "a list";
}

/// <summary>A set of <c>key: value</c> lines.</summary>
/// <param name="Entries">The entries in order; no key twice.</param>
/// <param name="Line">Counted from 1.</param>
/// <param name="Column">Counted from 1.</param>
public sealed record MapNode(IReadOnlyList<MapEntry> Entries, int Line, int Column) : Node(Line, Column)
{
    /// <inheritdoc/>
    public override string Words => "a group of 'key: value' lines";
}

/// <summary>One <c>key: value</c>.</summary>
/// <param name="Key">The key.</param>
/// <param name="KeyLine">Line of the key.</param>
/// <param name="KeyColumn">Column of the key.</param>
/// <param name="Value">What it holds.</param>
public sealed record MapEntry(string Key, int KeyLine, int KeyColumn, Node Value);
