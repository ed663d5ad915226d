namespace Layshaft.Book.Problems;

/// <summary>How much a problem matters.</summary>
public enum Severity
{
    /// <summary>The book cannot be published until this is fixed.</summary>
    Stops,

    /// <summary>A photo or the like is left out; the rest is published. The exit code still shows it.</summary>
    LeftOut,

    /// <summary>Worth knowing; nothing is left out, and the exit code does not change.</summary>
    Notice,
}
