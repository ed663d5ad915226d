using UnitsNet;
using Eng = Layshaft.Engineering.Gearing;

namespace Layshaft.Site.Pages.Gearing;

/// <summary>Says what a gearing runs against, in plain cautions.</summary>
internal static class GuardWords
{
    public static IReadOnlyList<string> Of(Eng.GearingCandidate candidate, Composition composition) =>
        [.. candidate.Cautions.Select(c => Sentence(c, composition))];

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
