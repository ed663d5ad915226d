namespace Layshaft.Site.Publishing;

/// <summary>Makes outputs of the site.</summary>
public interface IOutputMaker
{
    /// <summary>Writes the bytes of an output: the same ones for the same inputs. Called at most once for each, from any thread.</summary>
    /// <param name="path">Which output.</param>
    /// <param name="stream">Where to.</param>
    /// <returns>Whether the next publish shall make it again although its inputs are the same.</returns>
    bool Make(string path, Stream stream);
}
