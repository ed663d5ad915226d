namespace Layshaft.Site.Charts.Terms;

/// <summary>Drawings of damage to friction plates, ramps and preload springs.</summary>
internal static class FrictionTermDrawings
{
    private const string Ramps = "M8 24H58L80 72L102 24H152V104H8Z";

    public static IReadOnlyDictionary<string, Action<TermPen>> All { get; } = new Dictionary<string, Action<TermPen>>(StringComparer.Ordinal)
    {
        ["worn plate"] = p => p.Ghost("M12 42H148V70H12Z").Metal("M12 49H148V63H12Z").Damage("M12 49H148M12 63H148"),
        ["glazed plate"] = p => p.Plate().Tone("M80 17A38 38 0 0 1 118 55H110A30 30 0 0 0 80 25Z").Tone("M80 93A38 38 0 0 1 42 55H50A30 30 0 0 0 80 85Z"),
        ["burnt plate"] = p => p.Plate().Hot("M80 13A42 42 0 0 1 122 55H106A26 26 0 0 0 80 29Z").Hot("M46 30L58 42A26 26 0 0 0 54 55H38A42 42 0 0 1 46 30Z"),
        ["warped plate"] = p => p.Ghost("M12 50H148M12 62H148").Metal("M12 46C50 76 106 28 148 58V70C106 40 50 88 12 58Z").Damage("M12 46C50 76 106 28 148 58"),
        ["broken tab"] = p => p.Plate().Ghost("M72 10V2H88V10").Pit("M70 9H90V16H70Z").Damage("M70 16L76 12L82 17L90 14"),
        ["worn ramp"] = p => p.Ghost("M58 24L80 72L102 24").Metal("M8 24H52L74 80H86L108 24H152V104H8Z").Ball(80, 52, 18).Damage("M52 24L74 80M108 24L86 80"),
        ["dented ramp"] = p => p.Metal(Ramps).Ball(80, 30, 16).Pit("M66 42C70 40 74 46 72 54Z").Pit("M94 42C90 40 86 46 88 54Z").Damage("M64 38L74 60M96 38L86 60"),
        ["weak spring"] = p => p.Ghost("M16 84L66 30H94L144 84").Metal("M16 84L66 62H94L144 84V92L94 70H66L16 92Z").Damage("M66 62H94"),
    };
}
