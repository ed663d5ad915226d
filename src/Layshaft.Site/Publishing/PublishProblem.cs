namespace Layshaft.Site.Publishing;

/// <summary>Why a site could not be published, or what should be known about one that was.</summary>
/// <param name="Path">The file or folder that it is about.</param>
/// <param name="Message">What is wrong and what to do.</param>
public sealed record PublishProblem(string Path, string Message)
{
    /// <inheritdoc/>
    public override string ToString() => $"{Path}: {Message}";
}
