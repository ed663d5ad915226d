using System.Globalization;
using CsCheck;

namespace Layshaft.Book.Tests.Hostile;

/// <summary>
/// Samples made-up input: a short run as part of the suite; with <c>LAYSHAFT_FUZZ_MINUTES</c> set each target runs for so
/// many minutes. With <c>LAYSHAFT_FUZZ_LOG</c> set, a line for each target is added to that file: its name and its count; and what was in hand for more than 20 s.
/// </summary>
internal static class Fuzz
{
    /// <summary>Pieces that readers have stumbled over.</summary>
    private static readonly string[] s_pieces =
    [
        "a:", " ", "\n", "- ", "? ", ": ", "[", "]", "{", "}", ",", "\"", "'", "|", ">", "&a ", "*a", "!t ", "#", "%YAML 1.2", "---", "...", "\t",
        "é", "\u0085", "\uD800", "\uDC00", "\uFEFF", "\0", "\u202E", "  ", "<<: ", "\\x41", "\\u00e9", "\\uD83D", "0", "-", "1e9", "99999999999999999999",
        "0.0000000000000001", "NaN", "mm", "in", "µm", "h", " to ", "at most ", "driving", "/", "R", "ZR", "(Y)", "x", "\r", "\r\n", "~", "null", "yes",
        "<script>", "](javascript:x)", "{{ page }}", "{{ end }}", "$", "\\", "`", "**", "> ", "| a | b |\n|--|--|\n", "☃", "𝕏", "12", "2026-02-30", "°", "%",
    ];

    private static readonly double s_minutes =
        double.TryParse(Environment.GetEnvironmentVariable("LAYSHAFT_FUZZ_MINUTES"), NumberStyles.Float, CultureInfo.InvariantCulture, out var minutes) ? minutes : 0;

    private static readonly Gen<string> Piece = Gen.Int[0, s_pieces.Length - 1].Select(i => s_pieces[i]);

    private static readonly TimeSpan s_long = TimeSpan.FromSeconds(20);

    /// <summary>Texts put together of such pieces and of any characters.</summary>
    public static Gen<string> Soup { get; } = Gen.OneOf(Piece, Piece, Gen.Char.Select(c => c.ToString())).List[0, 30].Select(p => string.Concat(p));

    /// <summary>Texts of a kind that is read, spoilt in a few places.</summary>
    /// <param name="seeds">Good texts.</param>
    public static Gen<string> Spoilt(params IReadOnlyList<string> seeds) =>
        Gen.Select(Gen.Int[0, seeds.Count - 1], Gen.Select(Gen.Int[0, 1_000_000], Piece, Gen.Int[0, 4], Gen.Int[1, 40]).List[1, 6], (seed, changes) =>
        {
            var text = seeds[seed];
            foreach (var (where, piece, how, length) in changes)
            {
                var at = where % (text.Length + 1);
                var rest = Math.Min(length, text.Length - at);
                text = how switch
                {
                    0 => text.Insert(at, piece),
                    1 => text.Remove(at, rest),
                    2 => text.Insert(at, text.Substring(at, rest)),
                    3 => text.Remove(at, rest).Insert(at, piece),
                    _ => text[..at],
                };
            }

            return text;
        });

    /// <summary>Samples, and keeps the count.</summary>
    /// <param name="what">The target.</param>
    /// <param name="gen">Makes the inputs.</param>
    /// <param name="check">Throws when an input does harm.</param>
    /// <param name="usual">How many in the suite.</param>
    /// <param name="share">This sample's share of a target that is made of several.</param>
    public static void Sample<T>(string what, Gen<T> gen, Action<T> check, int usual, double share = 1)
    {
        var count = 0L;
        var seen = 0L;
        object? inHand = null;
        var log = Environment.GetEnvironmentVariable("LAYSHAFT_FUZZ_LOG");
        using var watch = new Timer(
            _ =>
            {
                if (Volatile.Read(ref count) == seen && log is { Length: > 0 })
                {
                    File.AppendAllText(log, $"{what}\tin hand for long:\t{inHand}\n");
                }

                seen = Volatile.Read(ref count);
            },
            null,
            s_long,
            s_long);
        void Counted(T input)
        {
            Volatile.Write(ref count, count + 1);
            inHand = input;
            check(input);
        }

        if (s_minutes > 0)
        {
            gen.Sample(Counted, time: Math.Max(1, (int)(s_minutes * 60 * share)), threads: 1);
        }
        else
        {
            gen.Sample(Counted, iter: usual * Math.Max(1, Check.Iter / 100), threads: 1);
        }

        if (log is { Length: > 0 })
        {
            File.AppendAllText(log, string.Create(CultureInfo.InvariantCulture, $"{what}\t{count}\n"));
        }
    }
}
