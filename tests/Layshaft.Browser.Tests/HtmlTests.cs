namespace Layshaft.Browser.Tests;

[Collection(OneDemo.Name)]
public class HtmlTests(PublishedDemo demo)
{
    [NuCheckerFact]
    public async Task Every_page_is_HTML_without_an_error_and_a_planted_error_is_found()
    {
        var planted = Path.Combine(Path.GetTempPath(), $"layshaft-planted-{Guid.NewGuid():N}.html");
        await File.WriteAllTextAsync(planted, "<!doctype html><html lang=\"en\"><title>Planted</title><p><table><tr><td id=a><td id=a></table>");
        try
        {
            var errors = await NuChecker.ErrorsIn([.. demo.Pages.Select(p => Path.Combine(demo.Site, p)), planted]);

            var found = errors.Where(e => e.Contains(Path.GetFileName(planted), StringComparison.Ordinal)).ToList();
            Assert.Contains(found, e => e.Contains("Duplicate ID", StringComparison.Ordinal));
            Assert.True(errors.Count == found.Count, string.Join('\n', errors.Except(found)));
        }
        finally
        {
            File.Delete(planted);
        }
    }
}
