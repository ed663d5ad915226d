namespace Layshaft.Site.Charts.Terms;

/// <summary>Drawings of damage to dog rings, hubs and selectors.</summary>
internal static class EngagementTermDrawings
{
    private const string Base = "M8 88H152V104H8Z";
    private const string NewDog = "M48 88L42 40H96L90 88Z";

    public static IReadOnlyDictionary<string, Action<TermPen>> All { get; } = new Dictionary<string, Action<TermPen>>(StringComparer.Ordinal)
    {
        ["rounded dogs"] = p => p.Metal(Base).Ghost(NewDog).Metal("M48 88L44 66C44 50 54 40 69 40C84 40 94 50 94 66L90 88Z").Damage("M44 66C44 50 54 40 69 40C84 40 94 50 94 66"),
        ["chipped dog"] = p => p.Metal(Base).Ghost(NewDog).Metal("M48 88L42 40H76L80 50L88 54L92 70L90 88Z").Damage("M76 40L80 50L88 54L92 70"),
        ["back-cut worn"] = p => p.Metal(Base).Ghost(NewDog).Metal("M48 88V40H90V88Z").Damage("M48 40V88M90 40V88"),
        ["blued dogs"] = p => p.Dogs().Hot("M45 64L42 40H96L93 64Z").Hot("M43 50L42 40H96L95 50Z"),
        ["dog corner radius"] = p => p.Metal(Base).Ghost("M84 40H96L94 54").Metal("M48 88L42 40H84C90 40 95 46 94 54L90 88Z").Damage("M84 40C90 40 95 46 94 54").Edge("M84 52L112 24M112 24H132"),
        ["burred dogs"] = p => p.Dogs().Damage("M42 40C34 36 34 44 38 48M96 40C104 36 104 44 100 48"),
        ["worn fork pads"] = p => p.Fork().Ghost("M22 78H30M22 78V100H30M138 78H130M138 78V100H130").Tone("M30 78H48V100H30Z").Tone("M112 78H130V100H112Z").Damage("M30 78V100M130 78V100"),
        ["blued fork"] = p => p.Fork().Hot("M29 74H49L48 100H30Z").Hot("M111 74H131L130 100H112Z").Hot("M30 88H48V100H30Z").Hot("M112 88H130V100H112Z"),
        ["bent fork"] = p => p.Ghost("M72 34C42 38 28 60 30 100H48C46 70 56 52 80 52").Metal("M72 8H88V34C118 38 132 60 130 100H112C114 70 104 52 80 52C62 52 44 66 36 92L20 84C28 54 46 38 72 34Z").Damage("M20 84L36 92"),
        ["worn detent"] = p => p.Metal("M8 104V70H50L66 88H94L110 70H152V104Z").Ghost("M50 70L80 100L110 70").Metal("M70 10H90V52L80 64L70 52Z").Damage("M56 76L66 88H94L104 76").Damage("M74 57C78 62 82 62 86 57"),
        ["worn hub splines"] = p => p.Splines().Ghost("M28 36V60M76 36V60M124 36V60").Tone("M28 36H36V60H28Z").Tone("M76 36H84V60H76Z").Tone("M124 36H132V60H124Z").Damage("M36 36V60M84 36V60M132 36V60"),
        ["ring tight on hub"] = p => p.Splines().Metal("M8 12H152V30H122V54H102V30H74V54H54V30H26V54H8Z").Damage("M52 36L56 42L52 48L56 54M100 36L104 42L100 48L104 54"),
        ["cracked ring"] = p => p.DogRing().Damage("M92 18L88 26L94 30L88 36"),
    };
}
