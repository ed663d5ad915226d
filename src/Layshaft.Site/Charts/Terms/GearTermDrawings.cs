namespace Layshaft.Site.Charts.Terms;

/// <summary>Drawings of damage to gear teeth.</summary>
internal static class GearTermDrawings
{
    public static IReadOnlyDictionary<string, Action<TermPen>> All { get; } = new Dictionary<string, Action<TermPen>>(StringComparer.Ordinal)
    {
        ["polishing"] = p => p.Flank().Edge("M40 44L58 30M52 48L82 30M76 48L106 30M100 48L124 32").Edge("M40 84L64 66M64 84L88 66M88 84L112 66"),
        ["normal wear"] = p => p.Flank().Tone("M14 30H146V48H14Z").Tone("M14 62H146V80H14Z"),
        ["moderate wear"] = p => p.Flank().Tone("M14 28H146V50H14Z").Tone("M14 60H146V86H14Z").Damage("M14 50H146M14 60H146"),
        ["excessive wear"] = p => p.Ghost("M50 66C55 48 60 30 66 14H94C100 30 105 48 110 66")
            .Metal("M8 104V92C34 92 44 86 56 74C60 60 66 36 74 14H94C100 30 105 48 110 66C116 84 126 92 152 92V104Z").Damage("M46 88C54 80 60 62 74 14"),
        ["abrasive wear"] = p => p.Flank().Tone("M14 22H146V96H14Z").Each(22, 140, 7, (q, x) => q.Edge(FormattableString.Invariant($"M{x} 28V50M{x + 3} 60V90"))),
        ["scratching"] = p => p.Flank().Damage("M38 26V50M42 60V92M78 24V48M82 62V90M116 28V50M113 60V86"),
        ["interference wear"] = p => p.Tooth().Damage("M42 86C52 82 56 76 52 64").Pit("M40 88C48 84 52 76 51 64C60 74 56 88 40 88Z").Ghost("M20 40C34 46 44 56 50 74"),
        ["chemical corrosion"] = p => p.Flank().Hot("M24 30C44 22 58 36 52 50C40 62 20 52 24 30Z").Hot("M92 62C112 54 138 64 130 82C116 96 88 86 92 62Z").Strew(14, 26, 30, 52, 50, 1.6).Strew(16, 94, 64, 130, 84, 1.6),
        ["fretting corrosion"] = p => p.Flank().Hot("M58 42H102V68H58Z").Each(60, 100, 5, (q, x) => q.Damage(FormattableString.Invariant($"M{x} 52V58"))),
        ["scaling"] = p => p.Flank().Each(30, 130, 20, (q, x) => q.Tone(FormattableString.Invariant($"M{x - 7} 40C{x} 30 {x + 8} 36 {x + 6} 46Z"))
            .Tone(FormattableString.Invariant($"M{x - 4} 78C{x + 2} 66 {x + 10} 72 {x + 8} 82Z"))),
        ["overheating"] = p => p.Flank().Hot("M14 22H146V96H14Z").Hot("M14 36H146V74H14Z").Hot("M14 48H146V62H14Z"),
        ["cavitation"] = p => p.Flank().Strew(26, 30, 62, 70, 88, 1.7).Strew(20, 92, 64, 128, 86, 1.7),
        ["electric erosion"] = p => p.Flank().Dot(60, 46, 4).Dot(96, 68, 5).Damage("M52 38L60 46L54 54M88 58L98 68L90 80M104 60L96 68L106 76"),
        ["scuffing"] = p => p.Flank().Tone("M30 22H128V46H30Z").Each(32, 128, 6, (q, x) => q.Damage(FormattableString.Invariant($"M{x} 24L{x + 2} 34L{x - 1} 46M{x + 2} 70L{x} 80L{x + 3} 94"))),
        ["indentation"] = p => p.Flank().Pit("M70 48C78 42 92 46 90 56C86 64 68 62 70 48Z").Edge("M62 44C72 34 98 38 98 56"),
        ["plastic deformation"] = p => p.Ghost("M66 14H94C100 30 105 48 110 66").Metal("M8 104V92C34 92 44 84 52 66C58 48 70 34 88 18L116 30C108 40 108 54 112 66C118 84 128 92 152 92V104Z").Damage("M88 18L116 30L120 40"),
        ["rippling"] = p => p.Flank().Each(30, 90, 8, (q, y) => q.Damage(FormattableString.Invariant($"M22 {y}C36 {y - 5} 48 {y + 5} 62 {y}S90 {y + 5} 104 {y}S130 {y + 4} 138 {y}"))),
        ["ridging"] = p => p.Flank().Each(26, 136, 11, (q, x) => q.Tone(FormattableString.Invariant($"M{x} 22H{x + 5}V96H{x}Z")).Edge(FormattableString.Invariant($"M{x} 22V96"))),
        ["burrs"] = p => p.Tooth().Damage("M94 14C104 10 106 16 104 22M66 14C56 10 54 16 56 22"),
        ["initial pitting"] = p => p.Flank().Strew(7, 40, 50, 122, 62, 2.2),
        ["progressive pitting"] = p => p.Flank().Strew(34, 24, 48, 138, 88, 3.2).Pit("M60 62C70 54 88 58 86 68C78 78 58 74 60 62Z"),
        ["micropitting"] = p => p.Flank().Tone("M18 58H142V92H18Z").Strew(90, 20, 60, 140, 90, 0.7),
        ["flake pitting"] = p => p.Flank().Pit("M60 78L80 48L102 74Z").Pit("M112 84L124 66L136 82Z").Edge("M60 78L80 48"),
        ["spalling"] = p => p.Flank().Pit("M40 46C58 34 76 44 96 40C122 36 128 60 116 74C96 88 62 84 46 76C32 66 30 54 40 46Z").Edge("M34 40C52 26 118 26 130 48"),
        ["case crushing"] = p => p.Tooth().Ghost("M60 66C65 50 69 34 73 22H87C91 34 95 50 100 66").Damage("M57 52C66 56 62 66 58 78M103 46C94 54 98 64 102 76").Tone("M50 66C55 48 60 30 66 14L73 22C69 34 65 50 60 66Z"),
        ["hardening crack"] = p => p.Tooth().Damage("M80 14L76 26L83 38L77 52L82 62"),
        ["grinding crack"] = p => p.Flank().Damage("M30 40H70M40 30V54M58 32V50M90 66H132M98 58V84M116 60V80M40 54L52 62M116 80L128 86"),
        ["fatigue crack"] = p => p.Tooth().Damage("M49 84C60 84 66 90 74 88").Damage("M49 84L44 80"),
        ["overload breakage"] = p => p.Stump().Damage("M50 66L58 60L64 68L72 58L80 70L88 60L96 68L104 60L110 66"),
        ["tooth shear"] = p => p.Stump().Damage("M50 66H110").Edge("M124 40H148M140 34L148 40L140 46"),
        ["fatigue breakage"] = p => p.Stump().Edge("M50 66C62 72 70 72 78 66M56 66C62 69 68 69 72 66").Damage("M80 66L86 60L92 70L98 60L104 68L110 66"),
    };
}
