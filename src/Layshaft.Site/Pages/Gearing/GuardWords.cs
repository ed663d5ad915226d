using UnitsNet;
using Eng = Layshaft.Engineering.Gearing;

namespace Layshaft.Site.Pages.Gearing;

/// <summary>Says what a gearing runs against, in plain cautions.</summary>
internal static class GuardWords
{
    /// <summary>The cautions of the planned day, and the limits that are passed only on a changed one.</summary>
    public static IReadOnlyList<string> Of(Eng.GearingCandidate candidate, Composition composition) =>
    [
        .. candidate.Cautions.Select(c => Sentence(c, composition)),
        .. candidate.PassedLimits.Where(p => p.Change is not null)
            .Select(p => composition.Say("gearing.with_change", ("change", GearingWords.Change(p.Change!, composition)), ("sentence", Sentence(p.Caution, composition)))),
    ];

    /// <summary>The limits that are passed, in a few words.</summary>
    public static string Limits(Eng.GearingCandidate candidate, Composition composition) =>
        string.Join(", ", candidate.PassedLimits.Select(p => Limit(p.Caution.Kind, composition)));

    /// <summary>A limit in a few words.</summary>
    public static string Limit(Eng.GearingCautionKind kind, Composition composition) => composition.Say("gearing.limit." + Key(kind));

    /// <summary>Why nothing in stock can be used, and what would help.</summary>
    public static string Shortfall(Eng.LimitShortfall shortfall, Composition composition) => composition.Say(
        "gearing.none." + Key(shortfall.Kind),
        ("count", shortfall.Count),
        ("limit", Write(shortfall.Limit, composition)),
        ("figure", Write(shortfall.Least, composition)),
        ("final", shortfall.FinalDriveBelow is { } ratio ? composition.Figures.Number(ratio, 2).Text : string.Empty));

    private static string Key(Eng.GearingCautionKind kind) => kind switch
    {
        Eng.GearingCautionKind.PropshaftSpeed => "propshaft",
        Eng.GearingCautionKind.GearboxOutputSpeed => "output",
        Eng.GearingCautionKind.CornerOverRev => "corner",
        _ => "tyre_speed",
    };

    private static string Sentence(Eng.GearingCaution caution, Composition composition)
    {
        var (figure, limit) = (Write(caution.Figure, composition), Write(caution.Limit, composition));
        return caution.Kind switch
        {
            Eng.GearingCautionKind.TyreSpeed => composition.Say("gearing.guard.tyre_speed", ("figure", figure), ("limit", limit)),
            Eng.GearingCautionKind.TyreSpeedOpenEnded => composition.Say("gearing.guard.tyre_speed_open", ("figure", figure), ("limit", limit)),
            Eng.GearingCautionKind.TyreSpeedNotKnown => composition.Say("gearing.guard.tyre_speed_unknown", ("figure", figure)),
            Eng.GearingCautionKind.PropshaftSpeed => composition.Say("gearing.guard.propshaft", ("figure", figure), ("limit", limit)),
            Eng.GearingCautionKind.GearboxOutputSpeed => composition.Say("gearing.guard.output", ("figure", figure), ("limit", limit)),
            Eng.GearingCautionKind.CornerOverRev => composition.Say("gearing.guard.corner", ("figure", figure), ("limit", limit)),
            Eng.GearingCautionKind.EngineAtLimiter => composition.Say("gearing.guard.limiter", ("figure", figure)),
            Eng.GearingCautionKind.LimiterAboveEngineLimit => composition.Say("gearing.guard.engine", ("figure", figure), ("limit", limit)),
            _ => composition.Say("gearing.guard.correction", ("figure", figure), ("limit", limit)),
        };
    }

    private static string Write(IQuantity? quantity, Composition composition) => quantity switch
    {
        Speed speed => composition.Figures.Speed(speed).Both,
        RotationalSpeed engine => composition.Figures.Rpm(engine).Text,
        Scalar number => composition.Figures.Number(number.Amount, 2).Text,
        _ => string.Empty,
    };
}
