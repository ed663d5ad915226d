namespace Layshaft.Site.Charts.Terms;

/// <summary>Drawings of damage to synchronisers, selector drums, pumps, chains and sensors.</summary>
internal static class MechanismTermDrawings
{
    public static IReadOnlyDictionary<string, Action<TermPen>> All { get; } = new Dictionary<string, Action<TermPen>>(StringComparer.Ordinal)
    {
        ["worn synchro cone"] = p => p.Metal("M20 96V70L110 40H140V96Z").Ghost("M20 58L110 28H140").Tone("M20 70L110 40V46L20 76Z").Damage("M20 70L110 40"),
        ["rounded synchro teeth"] = p => p.Ghost("M20 62L32 30L44 62M68 62L80 30L92 62M116 62L128 30L140 62")
            .Metal("M8 100V62H20C24 48 28 44 32 44C36 44 40 48 44 62H68C72 48 76 44 80 44C84 44 88 48 92 62H116C120 48 124 44 128 44C132 44 136 48 140 62H152V100Z")
            .Damage("M22 56C28 42 36 42 42 56M70 56C76 42 84 42 90 56M118 56C124 42 132 42 138 56"),
        ["cracked synchro ring"] = p => p.Ring().Damage("M80 9L76 15L82 19L78 25"),
        ["worn drum groove"] = p => p.Metal("M8 12H152V98H8Z").Pit("M8 40C46 40 58 64 96 64H152V80H96C50 80 42 56 8 56Z").Ghost("M8 44C48 44 58 67 96 67H152").Damage("M8 40C46 40 58 64 96 64H152"),
        ["chipped ratchet"] = p => p.Metal("M8 100V60L34 30V60L60 30V60L78 46L86 54V60L112 30V60L138 30V60H152V100Z").Ghost("M60 60L86 30V60").Damage("M78 46L86 54"),
        ["worn interlock"] = p => p.Metal("M8 12H64L80 26L96 12H152V34H8Z").Metal("M8 76H152V98H8Z").Ghost("M64 76L80 62L96 76").Ball(80, 55, 17).Damage("M66 44C72 36 88 36 94 44M66 66C72 74 88 74 94 66"),
        ["scored pump"] = p => p.Ring().Damage("M42 40A40 40 0 0 1 66 18M36 60A44 44 0 0 0 48 86M98 92A42 42 0 0 0 118 72"),
        ["stretched chain"] = p => p.Metal("M16 46H64V64H16Z").Metal("M62 46H110V64H62Z").Metal("M108 46H152V64H108Z").Ball(20, 55, 6).Ball(64, 55, 6).Ball(110, 55, 6).Ghost("M20 30V40M58 30V40M98 30V40").Damage("M64 72H110M64 68V76M110 68V76"),
        ["damaged sensor"] = p => p.Metal("M8 104V84H26V66H44V84H62V66H80V84H98V66H116V84H134V66H152V104Z").Metal("M62 4H98V44H62Z").Ghost("M66 44H94V56H66Z").Damage("M62 44L70 50L78 43L86 51L98 44"),
    };
}
