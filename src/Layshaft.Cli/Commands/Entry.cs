using System.CommandLine;
using System.CommandLine.Parsing;
using Layshaft.Book.Problems;

namespace Layshaft.Cli.Commands;

/// <summary>Parses and runs a command line.</summary>
public static class Entry
{
    /// <summary>Runs a command line.</summary>
    /// <param name="arguments">The words after the program's name.</param>
    /// <param name="output">Receives results.</param>
    /// <param name="errors">Receives problems and progress.</param>
    /// <returns>The exit code, see <see cref="ExitCode"/>.</returns>
    public static int Run(string[] arguments, TextWriter output, TextWriter errors) => Run(arguments, Console.In, output, errors);

    /// <summary>Runs a command line.</summary>
    /// <param name="arguments">The words after the program's name.</param>
    /// <param name="input">What is typed.</param>
    /// <param name="output">Receives results.</param>
    /// <param name="errors">Receives problems and progress.</param>
    /// <returns>The exit code, see <see cref="ExitCode"/>.</returns>
    public static int Run(string[] arguments, TextReader input, TextWriter output, TextWriter errors)
    {
        ArgumentNullException.ThrowIfNull(arguments);
        ArgumentNullException.ThrowIfNull(input);
        ArgumentNullException.ThrowIfNull(output);
        ArgumentNullException.ThrowIfNull(errors);
        var root = new RootCommand("Generate customer reports and workshop pages from a gearbox workshop's job files.");
        root.Subcommands.Add(CheckCommand.Create(output, errors));
        root.Subcommands.Add(PublishCommand.Create(output, errors));
        root.Subcommands.Add(UploadedCommand.Create(output, errors));
        root.Subcommands.Add(HandoverCommand.Create(output, errors));
        root.Subcommands.Add(ShimCommand.Create(output, errors));
        root.Subcommands.Add(MeasureCommand.Create(output, errors));
        root.Subcommands.Add(GearCommand.Create(output, errors));
        root.Subcommands.Add(TraceCommand.Create(output, errors));
        root.Subcommands.Add(SchemaCommand.Create(output));
        root.Subcommands.Add(NewBookCommand.Create(output, errors));
        root.Subcommands.Add(IntakeCommand.Create(output, errors));
        root.Subcommands.Add(EnterCommand.Create(input, output, errors));
        root.Subcommands.Add(PreviewCommand.Create(output, errors));
        root.Subcommands.Add(CompletionCommand.Create(output));
        var parsed = root.Parse(arguments);
        var configuration = new InvocationConfiguration { Output = output, Error = errors, EnableDefaultExceptionHandler = false };
        if (parsed.Errors.Count > 0)
        {
            foreach (var error in parsed.Errors)
            {
                errors.WriteLine(error.Message);
            }

            Advise(parsed, errors);
            return ExitCode.WrongUse;
        }

        try
        {
            return parsed.Invoke(configuration);
        }
        catch (Exception e) when (e is IOException or UnauthorizedAccessException)
        {
            errors.WriteLine(e.Message);
            return ExitCode.Problems;
        }
        catch (Exception e)
        {
            // The last resort: the user gets a sentence, and the old site is unchanged.
            errors.WriteLine($"Layshaft stopped on an internal error; the book is not the cause: {e}");
            return ExitCode.Problems;
        }
    }

    private static void Advise(ParseResult parsed, TextWriter errors)
    {
        var command = parsed.CommandResult.Command;
        // A mistyped option may have been taken for the argument.
        foreach (var word in parsed.UnmatchedTokens.Concat(parsed.Tokens.Where(t => t.Type == TokenType.Argument && t.Value.StartsWith("--", StringComparison.Ordinal)).Select(t => t.Value)).Distinct())
        {
            string[] known = [.. word.StartsWith('-') ? command.Options.Select(o => o.Name) : command.Subcommands.Select(c => c.Name)];
            if ((Array.Find(known, k => k.StartsWith(word, StringComparison.Ordinal)) ?? NearestWord.Of(word, known)) is { } near)
            {
                errors.WriteLine($"Did you mean '{near}'?");
            }
        }

        errors.WriteLine($"See 'layshaft {(command is RootCommand ? string.Empty : $"{command.Name} ")}--help'.");
    }
}
