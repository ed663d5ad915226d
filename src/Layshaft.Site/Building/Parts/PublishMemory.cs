using Layshaft.Site.Publishing;
using Layshaft.Site.Publishing.Register;

namespace Layshaft.Site.Building.Parts;

/// <summary>Everything that a publish knows from the one before, read in the background. Losing it costs time and nothing else.</summary>
public sealed class PublishMemory
{
    private readonly Lazy<SiteRegister> _register;
    private readonly Task<FileMemory> _files;
    private readonly Task<PartMemory> _parts;

    private PublishMemory(string output)
    {
        Output = output;
        _register = new(() => RegisterFile.Read(new StateFolder(OutputFolder.RealPath(output)).Register));
        _parts = Task.Run(() => PartMemory.Beside(output));
        _files = Task.Run(() => FileMemory.Beside(output));
    }

    /// <summary>The site's folder.</summary>
    public string Output { get; }

    /// <summary>What is known of the book's texts and pictures.</summary>
    public FileMemory Files => _files.GetAwaiter().GetResult();

    /// <summary>What is known of the parts of the book.</summary>
    public PartMemory Parts => _parts.GetAwaiter().GetResult();

    /// <summary>Of the files of the site.</summary>
    internal SiteRegister Register => _register.Value;

    /// <summary>The memory that is kept beside a site.</summary>
    /// <param name="output">The site's folder.</param>
    public static PublishMemory Beside(string output)
    {
        ArgumentNullException.ThrowIfNull(output);
        return new PublishMemory(output);
    }

    /// <summary>How to publish with what is known, and keep what was seen for the next time.</summary>
    /// <param name="options">How to publish.</param>
    internal PublishOptions With(PublishOptions options)
    {
        ArgumentNullException.ThrowIfNull(options);
        return options with { Known = _register, InPlace = Save };
    }

    /// <summary>Keeps what was seen, once the site is in place.</summary>
    public void Save()
    {
        Files.Save();
        Parts.Save(Files.Whole);
    }
}
