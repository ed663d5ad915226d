using System.CommandLine;

namespace Layshaft.Cli.Commands;

/// <summary><c>layshaft completion SHELL</c>: prints a script that completes commands and options in a shell.</summary>
internal static class CompletionCommand
{
    // Each asks the program itself, so that it always knows the commands and options of this version.
    private const string Bash =
        """
        _layshaft() {
          local IFS=$'\n'
          COMPREPLY=($(layshaft "[suggest:$((COMP_POINT))]" "$COMP_LINE" 2>/dev/null))
        }
        complete -o default -o bashdefault -F _layshaft layshaft
        """;

    private const string Zsh =
        """
        _layshaft() {
          local -a words_found
          words_found=("${(@f)$(layshaft "[suggest:$CURSOR]" "$BUFFER" 2>/dev/null)}")
          compadd -a words_found
          _files
        }
        compdef _layshaft layshaft
        """;

    private const string PowerShell =
        """
        Register-ArgumentCompleter -Native -CommandName layshaft -ScriptBlock {
          param($word, $line, $position)
          layshaft "[suggest:$position]" "$line" | ForEach-Object {
            [System.Management.Automation.CompletionResult]::new($_, $_, 'ParameterValue', $_)
          }
        }
        """;

    public static Command Create(TextWriter output)
    {
        var shell = new Argument<string>("SHELL") { Description = "The shell: bash, zsh or powershell." };
        shell.AcceptOnlyFromAmong("bash", "zsh", "powershell");
        var command = new Command("completion", "Print a script that completes commands and options in a shell. Example: layshaft completion bash >> ~/.bashrc") { shell };
        command.SetAction(parsed =>
        {
            output.WriteLine(parsed.GetRequiredValue(shell) switch { "bash" => Bash, "zsh" => Zsh, _ => PowerShell });
            return ExitCode.Fine;
        });
        return command;
    }
}
