namespace Layshaft.Engineering.Tests.PublishedSources;

/// <summary>A test on a data set that its licence keeps out of this project: skipped, and said to be, until a variable names a copy.</summary>
[AttributeUsage(AttributeTargets.Method)]
public sealed class DataFactAttribute : FactAttribute
{
    public DataFactAttribute(string variable, string how)
    {
        if (Environment.GetEnvironmentVariable(variable) is not { Length: > 0 })
        {
            Skip = $"Set {variable} to a copy of the data: {how}";
        }
    }
}
