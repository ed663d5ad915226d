namespace Layshaft.Book.Problems;

/// <summary>How much a problem matters.</summary>
public enum Severity
{
    /// <summary>The book cannot be published until this is mended.</summary>
    Stops,

    /// <summary>One picture or the like is left out; the rest is published. The exit code still tells.</summary>
    LeftOut,

    /// <summary>Worth knowing; nothing is left out, and the exit code does not change.</summary>
    Notice,
}
