namespace Layshaft.Cli.Commands;

/// <summary>What the program tells the shell.</summary>
public static class ExitCode
{
    /// <summary>All is well.</summary>
    public const int Fine = 0;

    /// <summary>The book has problems, or the site could not be written.</summary>
    public const int Problems = 1;

    /// <summary>The command line was wrong.</summary>
    public const int WrongUse = 2;
}
