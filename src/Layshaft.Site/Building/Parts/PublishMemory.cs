using Layshaft.Book.Yaml;
using Layshaft.Site.Publishing;
using Layshaft.Site.Publishing.Register;

namespace Layshaft.Site.Building.Parts;

/// <summary>Everything that a publish knows from the one before. Losing it costs time and nothing else.</summary>
/// <param name="Output">The site's folder.</param>
/// <param name="Files">Of the book's texts and pictures.</param>
/// <param name="Nodes">What files other than jobs were parsed to.</param>
/// <param name="Parts">Of the parts of the book.</param>
public sealed record PublishMemory(string Output, FileMemory Files, NodeMemory Nodes, PartMemory Parts)
{
    private readonly Lazy<SiteRegister> _register = new(() => RegisterFile.Read(new StateFolder(OutputFolder.RealPath(Output)).Register));

    /// <summary>Of the files of the site.</summary>
    internal SiteRegister Register => _register.Value;

    /// <summary>How to publish with what is known, and keep what was seen for the next time.</summary>
    /// <param name="options">How to publish.</param>
    internal PublishOptions With(PublishOptions options)
    {
        ArgumentNullException.ThrowIfNull(options);
        return options with { Known = _register, InPlace = Save };
    }

    /// <summary>The memory that is kept beside a site.</summary>
    /// <param name="output">The site's folder.</param>
    public static PublishMemory Beside(string output)
    {
        var (files, nodes) = (Task.Run(() => FileMemory.Beside(output)), Task.Run(() => NodeFile.Read(output)));
        var parts = PartMemory.Beside(output);
        return new(output, files.GetAwaiter().GetResult(), nodes.GetAwaiter().GetResult(), parts);
    }

    /// <summary>Keeps what was seen, once the site is in place.</summary>
    public void Save()
    {
        Files.Save();
        Parts.Save(Files.Whole);
    }
}
