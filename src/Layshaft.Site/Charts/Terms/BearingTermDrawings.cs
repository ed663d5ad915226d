namespace Layshaft.Site.Charts.Terms;

/// <summary>Drawings of damage to rolling bearings.</summary>
internal static class BearingTermDrawings
{
    public static IReadOnlyDictionary<string, Action<TermPen>> All { get; } = new Dictionary<string, Action<TermPen>>(StringComparer.Ordinal)
    {
        ["subsurface fatigue"] = p => p.Section().Damage("M62 76C72 82 88 82 98 76L108 66").Damage("M108 66L112 62"),
        ["surface fatigue"] = p => p.Track().Strew(30, 40, 44, 120, 66, 1.4).Pit("M70 48C84 42 98 50 92 60C80 66 66 60 70 48Z"),
        ["abrasive bearing wear"] = p => p.Track().Tone("M10 36H150V74H10Z").Each(42, 70, 5, (q, y) => q.Edge(FormattableString.Invariant($"M14 {y}H146"))),
        ["adhesive wear"] = p => p.Track().Damage("M36 48L70 46L62 50L96 48M44 58L88 56L80 62L124 58M60 66L104 66"),
        ["moisture corrosion"] = p => p.Track().Each(36, 124, 44, (q, x) => q.Hot(FormattableString.Invariant($"M{x - 10} 40H{x + 10}V70H{x - 10}Z")).Strew(9, x - 8, 42, x + 8, 68, 1.3)),
        ["false brinelling"] = p => p.Balls().Each(36, 124, 44, (q, x) => q.Hot(FormattableString.Invariant($"M{x - 13} 62C{x - 6} 70 {x + 6} 70 {x + 13} 62Z")).Edge(FormattableString.Invariant($"M{x - 18} 24H{x - 8}M{x + 8} 24H{x + 18}"))),
        ["bearing fretting"] = p => p.Ring().Hot("M46 24C56 14 70 8 84 9L82 22C72 20 62 26 56 34Z").Hot("M120 78C112 92 98 100 86 101L84 90C94 90 104 84 110 74Z"),
        ["electrical erosion"] = p => p.Track().Each(20, 142, 7, (q, x) => q.Damage(FormattableString.Invariant($"M{x} 40V70"))),
        ["brinelling"] = p => p.Balls().Each(36, 124, 44, (q, x) => q.Pit(FormattableString.Invariant($"M{x - 13} 62C{x - 8} 76 {x + 8} 76 {x + 13} 62Z"))).Damage("M80 4V24M74 18L80 26L86 18"),
        ["debris dents"] = p => p.Track().Strew(22, 18, 42, 142, 70, 2.2),
        ["handling dents"] = p => p.Ring().Pit("M108 16L124 22L118 30Z").Damage("M132 8L120 20M126 20H119V13"),
        ["forced fracture"] = p => p.Ring().Damage("M80 9L76 14L84 18L78 25M70 100L76 94L72 90L80 85"),
        ["fatigue fracture"] = p => p.Ring().Damage("M110 55C114 60 120 54 126 56").Edge("M112 48C118 44 122 46 126 44M112 64C118 68 122 64 126 68"),
        ["thermal cracking"] = p => p.Track().Hot("M10 44H150V66H10Z").Each(24, 140, 16, (q, x) => q.Damage(FormattableString.Invariant($"M{x} 46L{x + 2} 54L{x - 1} 64"))),
        ["heat discolouration"] = p => p.Ring().Hot("M80 9A46 46 0 0 1 80 101L80 85A30 30 0 0 0 80 25Z").Hot("M112 22A46 46 0 0 1 112 88L101 76A30 30 0 0 0 101 34Z"),
    };
}
