namespace Layshaft.Site.Templates;

/// <summary>Where templates and texts are read from: a shop's own folder first, file by file, then ours.</summary>
/// <param name="Ours">The folder that comes with the program.</param>
/// <param name="Shop">The shop's folder, or null; a file in it replaces ours of the same name.</param>
public sealed record TemplateFolders(string Ours, string? Shop = null)
{
    /// <summary>The name of the folder that is copied beside the program.</summary>
    public const string FolderName = "site-templates";

    /// <summary>The folder of a book with the shop's own templates.</summary>
    public const string BookFolder = "templates";

    /// <summary>Our folder beside the running program, with an optional shop's folder before it.</summary>
    /// <param name="shop">The shop's folder, or null.</param>
    public static TemplateFolders BesideProgram(string? shop = null) =>
        new(Path.Combine(AppContext.BaseDirectory, FolderName), shop);
}
