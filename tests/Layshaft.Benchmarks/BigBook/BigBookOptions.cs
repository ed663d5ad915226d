using System.Globalization;

namespace Layshaft.Benchmarks.BigBook;

/// <summary>How large a made-up book is.</summary>
/// <param name="Folder">Where it is written; must not exist.</param>
/// <param name="Base">The book whose shop, gearboxes, venues and kinds of car are taken over.</param>
/// <param name="Jobs">How many jobs.</param>
/// <param name="Units">How many units.</param>
/// <param name="Photos">How many photos a job has.</param>
/// <param name="PhotoWidth">Width of a photo, in pixels; its height is three quarters of that.</param>
/// <param name="Seed">The same number gives the same book, byte for byte.</param>
internal sealed record BigBookOptions(string Folder, string Base, int Jobs, int Units, int Photos, int PhotoWidth, int Seed)
{
    public const string Usage = "book FOLDER [--jobs 10000] [--units 1500] [--photos 6] [--photo-width 320] [--seed 1] [--base demo-data]";

    /// <summary>Reads the words after <c>book</c>; null when they make no sense.</summary>
    public static BigBookOptions? Of(IReadOnlyList<string> words)
    {
        if (words.Count == 0 || words.Count % 2 == 0)
        {
            return null;
        }

        var options = new BigBookOptions(words[0], "demo-data", 10_000, 1_500, 6, 320, 1);
        for (var i = 1; i < words.Count; i += 2)
        {
            var isNumber = int.TryParse(words[i + 1], NumberStyles.None, CultureInfo.InvariantCulture, out var number);
            var next = words[i] switch
            {
                "--base" => options with { Base = words[i + 1] },
                "--jobs" when isNumber && number > 0 => options with { Jobs = number },
                "--units" when isNumber && number > 0 => options with { Units = number },
                "--photos" when isNumber => options with { Photos = number },
                "--photo-width" when isNumber && number >= 16 => options with { PhotoWidth = number },
                "--seed" when isNumber => options with { Seed = number },
                _ => null,
            };
            if (next is null)
            {
                return null;
            }

            options = next;
        }

        return options;
    }
}
