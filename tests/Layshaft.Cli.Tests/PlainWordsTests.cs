using System.Reflection;
using System.Reflection.Metadata;
using System.Reflection.Metadata.Ecma335;
using System.Reflection.PortableExecutable;
using System.Text.RegularExpressions;
using Layshaft.Book.Reading;
using Layshaft.Cli.Commands;

namespace Layshaft.Cli.Tests;

/// <summary>The command line and the book's reader print plain English: no string in their code has one of these patterns.</summary>
public class PlainWordsTests
{
    // Pattern, a text that has it, and what to write instead.
    private static readonly (string Pattern, string Example, string Instead)[] Avoided =
    [
        (@"where nothing is said", "0.005 mm where nothing is said", "Default: 0.005 mm"),
        (@"\bmend(s|ed)?\b", "Mend these first", "fix, correct"),
        (@"\banew\b", "written anew", "again"),
        (@"\bin all\b", "what it has run in all", "total, in total"),
        (@"\blikewise\b", "the others likewise", "also"),
        (@"\bfor want of\b", "for want of a price", "because the price is missing"),
        (@"\breckon", "reckoned from the ratio", "calculate"),
        (@"\b(pressing|dearest)\b", "how pressing it is", "urgent, most expensive"),
        (@"(?<![Tt]here )\b(is|are|needs|names) no (?!longer)[a-z-]+", "A temperature is no setting.", "is not a, has no"),
        (@"\b(stands?|stood)\b", "Here stands a list", "is; Expected {y}, found {x}."),
        (@"\b(tell|tells|told)\b", "the system does not tell of changes", "report, show"),
        (@"\b(hold|holds|held)\b", "How long an estimate holds", "contain, is valid, keep"),
        (@"\b(say|says|said)\b", "the report will say so", "state, show, write"),
        (@"\btake\b.*\bout\b", "take the line out", "remove"),
        (@"\b(look|looks|looked|looking) at\b", "a part that is looked at", "inspect, check"),
        (@"\bmanual('s)?\b[^.]*\brules?\b", "The maker's manual rules.", "takes precedence"),
        (@"\bwhat (more|it|they|the unit) (shim|has run|had run)", "what it has run", "usage"),
        (@"\b(running|run) (hours|in all)\b", "running hours", "usage"),
        (@"\bless than nothing\b", "'-1' is less than nothing.", "is negative"),
        (@"\b(can't|won't|doesn't|isn't)\b", "This file can't be opened.", "cannot"),
        (@"\blike \{?[0-9]", "Write it like 0.10 mm.", "such as"),
        (@"\be-mail\b", "is no e-mail address", "email"),
        (@"\b(anybody|somebody|whoever)\b", "Somebody who works at the bench", "name who it is"),
        (@"\b(his|him)\b", "in his words", "their"),
        (@"\bpictures?\b", "There is no picture", "photo, image"),
        (@"\bremarks?\b", "the remarks in each file", "comment, note"),
    ];

    public static TheoryData<Type> Speakers => [typeof(Entry), typeof(BookReader)];

    [Theory]
    [MemberData(nameof(Speakers))]
    public void No_string_has_a_pattern_that_we_avoid(Type speaker)
    {
        var strings = StringsOf(speaker.Assembly);
        Assert.True(strings.Count > 500, $"Only {strings.Count} strings were found.");

        string[] found = [.. strings.SelectMany(s => Avoided.Where(a => Regex.IsMatch(s, a.Pattern, RegexOptions.IgnoreCase)).Select(a => $"\"{s}\": write {a.Instead}"))];

        Assert.True(found.Length == 0, string.Join('\n', found));
    }

    [Fact]
    public void Each_pattern_finds_what_it_is_for() => Assert.All(Avoided, a => Assert.Matches(new Regex(a.Pattern, RegexOptions.IgnoreCase), a.Example));

    // The heap of user strings has every text that the code loads, and the pieces of interpolated ones.
    private static List<string> StringsOf(Assembly assembly)
    {
        using var file = new PEReader(File.OpenRead(assembly.Location));
        var reader = file.GetMetadataReader();
        var strings = new List<string>();
        for (var handle = MetadataTokens.UserStringHandle(1); !handle.IsNil; handle = reader.GetNextHandle(handle))
        {
            strings.Add(reader.GetUserString(handle));
        }

        return strings;
    }
}
