using System.Text.Json;
using Layshaft.Cli.Commands;

namespace Layshaft.Cli.Tests;

public class SchemaCommandTests
{
    [Fact]
    public void Schemas_are_written_for_every_kind_of_file_and_again_over_old_ones()
    {
        var home = Directory.CreateTempSubdirectory("layshaft-cli-");
        try
        {
            var folder = Path.Combine(home.FullName, "book", "schema");
            using var output = new StringWriter();
            Assert.Equal(ExitCode.Fine, Entry.Run(["schema", folder], output, TextWriter.Null));
            var first = Texts(folder);
            File.WriteAllText(Path.Combine(folder, "job.json"), "old");

            Assert.Equal(ExitCode.Fine, Entry.Run(["schema", folder], output, TextWriter.Null));

            Assert.Equal(first, Texts(folder));
            Assert.Equal(["car", "customer", "gearbox", "job", "shop", "unit", "venue"], first.Select(t => JsonDocument.Parse(t).RootElement.GetProperty("title").GetString()));
            Assert.Contains("# yaml-language-server: $schema=../../../schema/job.json", output.ToString(), StringComparison.Ordinal);
        }
        finally
        {
            home.Delete(recursive: true);
        }
    }

    private static string[] Texts(string folder) => [.. Directory.GetFiles(folder).Order(StringComparer.Ordinal).Select(File.ReadAllText)];
}
