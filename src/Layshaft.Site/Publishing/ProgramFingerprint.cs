namespace Layshaft.Site.Publishing;

/// <summary>A mark that differs between builds of the program that may make different pages.</summary>
public static class ProgramFingerprint
{
    /// <summary>The module version ids of our assemblies, which a deterministic build derives from what was compiled.</summary>
    public static string Value { get; } = string.Join(
        ' ',
        typeof(ProgramFingerprint).Assembly.GetReferencedAssemblies()
            .Where(name => name.Name!.StartsWith("Layshaft.", StringComparison.Ordinal))
            .Select(System.Reflection.Assembly.Load)
            .Append(typeof(ProgramFingerprint).Assembly)
            .Select(assembly => assembly.ManifestModule.ModuleVersionId.ToString())
            .Order(StringComparer.Ordinal));
}
