using System.Globalization;
using System.Numerics;

namespace Layshaft.Cli.Starting;

/// <summary>The number of the next job, in the shop's own way of counting.</summary>
internal static class JobNumber
{
    /// <summary>
    /// One more than the highest number of the year's folder, or of the newest year before it while the folder is empty;
    /// with the same letters before it and the same number of digits. 1 when there are no jobs.
    /// </summary>
    /// <param name="existing">Year and number of every job's folder in the book.</param>
    /// <param name="year">The year in which the next job comes in.</param>
    public static string After(IEnumerable<(int Year, string Number)> existing, int year)
    {
        (int Year, string Number)[] all = [.. existing];
        var taken = all.Select(j => j.Number).ToHashSet(StringComparer.Ordinal);
        var counted = all.Where(j => j.Year <= year && j.Number.Length > 0 && char.IsAsciiDigit(j.Number[^1])).GroupBy(j => j.Year).MaxBy(g => g.Key);
        var last = counted?.Select(j => Split(j.Number)).MaxBy(n => n.Count) ?? (Head: string.Empty, Count: BigInteger.Zero, Digits: 4);
        string next;
        var count = last.Count;
        do
        {
            count++;
            next = last.Head + count.ToString(CultureInfo.InvariantCulture).PadLeft(last.Digits, '0');
        }
        while (taken.Contains(next)); // numbers are unique in the whole book

        return next;
    }

    private static (string Head, BigInteger Count, int Digits) Split(string number)
    {
        var head = number.TrimEnd('0', '1', '2', '3', '4', '5', '6', '7', '8', '9');
        var digits = number[head.Length..];
        return (head, BigInteger.Parse(digits, CultureInfo.InvariantCulture), digits.Length);
    }
}
