using Layshaft.Site.Figures;
using Layshaft.Site.Templates;
using Layshaft.Site.Wording;

namespace Layshaft.Cli.Bench;

/// <summary>How the bench commands write figures: millimetres, as shims and gauges are marked.</summary>
internal static class BenchFigures
{
    /// <exception cref="InvalidOperationException">The texts beside the program are damaged.</exception>
    public static FigureWriter Create()
    {
        var (texts, problems, _) = TextsLoader.Load(TemplateFolders.BesideProgram(null));
        return texts is null
            ? throw new InvalidOperationException($"The text files of the program cannot be read: {string.Join("; ", problems.Select(p => p.Message))}")
            : new FigureWriter(UnitChoice.Metric, texts);
    }
}
