using Layshaft.Cli.Commands;

namespace Layshaft.Cli.Tests;

public class CompletionTests
{
    [Theory]
    [InlineData("bash", "complete ")]
    [InlineData("zsh", "compdef ")]
    [InlineData("powershell", "Register-ArgumentCompleter ")]
    public void Each_shell_gets_lines_that_ask_the_program_itself(string shell, string said)
    {
        var (code, output) = Run("completion", shell);

        Assert.Equal(ExitCode.Fine, code);
        Assert.Contains(said, output, StringComparison.Ordinal);
        Assert.Contains("[suggest:", output, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("layshaft pre", "preview")]
    [InlineData("layshaft gear demo-data --ca", "--car")]
    [InlineData("layshaft check demo-data --ev", "--every-place")]
    [InlineData("layshaft completion z", "zsh")]
    public void The_program_answers_what_a_line_could_go_on_with(string line, string word)
    {
        var (code, output) = Run($"[suggest:{line.Length}]", line);

        Assert.Equal(ExitCode.Fine, code);
        Assert.Contains(word, output.Split('\n', StringSplitOptions.TrimEntries));
    }

    [Fact]
    public void Every_command_shows_an_example_of_itself()
    {
        var commands = Run("[suggest:9]", "layshaft ").Output.Split('\n', StringSplitOptions.TrimEntries | StringSplitOptions.RemoveEmptyEntries).Where(w => char.IsAsciiLetter(w[0])).ToArray();
        Assert.Contains("preview", commands);
        Assert.All(commands, command => Assert.Contains($"Example: layshaft {command}", Run(command, "--help").Output.ReplaceLineEndings(" "), StringComparison.Ordinal));
    }

    private static (int Code, string Output) Run(params string[] words)
    {
        using var output = new StringWriter();
        return (Entry.Run(words, output, TextWriter.Null), output.ToString());
    }
}
