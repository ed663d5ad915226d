namespace Layshaft.Cli.Commands;

/// <summary>The program's exit codes.</summary>
public static class ExitCode
{
    /// <summary>No problem.</summary>
    public const int Fine = 0;

    /// <summary>The book has problems, or the site could not be written.</summary>
    public const int Problems = 1;

    /// <summary>The command line was wrong.</summary>
    public const int WrongUse = 2;
}
