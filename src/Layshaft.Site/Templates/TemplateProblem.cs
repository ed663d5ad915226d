using System.Globalization;

namespace Layshaft.Site.Templates;

/// <summary>What is wrong in a template, and where.</summary>
/// <param name="File">The template's name, for instance <c>parts/photo.html</c>.</param>
/// <param name="Line">Line, from 1; 0 when the problem is the file itself.</param>
/// <param name="Column">Column, from 1; 0 when the problem is the file itself.</param>
/// <param name="Message">What is wrong and what to write instead.</param>
public sealed record TemplateProblem(string File, int Line, int Column, string Message)
{
    /// <summary>One line in the form that editors understand: <c>file(line,column): error: message</c>.</summary>
    public override string ToString() =>
        string.Create(CultureInfo.InvariantCulture, $"{File}({Line},{Column}): error: {Message}");
}
