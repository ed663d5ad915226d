using System.Globalization;
using Layshaft.Book.Records;
using Layshaft.Site.Assessment.Gearing;
using Eng = Layshaft.Engineering.Gearing;

namespace Layshaft.Cli.Terminal;

/// <summary>Writes which gears to fit, why, when others would be better, and the ranking.</summary>
/// <param name="speed">Which unit of speed comes first.</param>
internal sealed class GearingLines(SpeedUnit speed)
{
    private const int FirstRows = 12;
    private static readonly string[] s_head = ["rank", "drop gears (driven/driver)", "final drive (driven/driver)", "time per lap", "top speed", "engine", "on limiter", "corners between gears", "exceeds"];

    public void Write(GearingAnswer answer, TextWriter output)
    {
        output.WriteLine($"{answer.Case.Setup.Car.Name} at {answer.Case.Venue.Name}, {answer.Case.Box.Gearbox.Name} ({answer.Case.Unit.Serial}), air of {Number(answer.Case.Air.Air.Density.KilogramsPerCubicMeter, "0.000")} kg/m³ ({Source(answer.Case.Air)}), {Wind(answer.Case.Car.Conditions.Wind)}.");
        output.WriteLine();
        foreach (var line in Answer(answer))
        {
            output.WriteLine(line);
        }

        output.WriteLine();
        var ranked = answer.Ranking.Candidates;
        var rows = ranked.Take(FirstRows).Select((c, i) => Row(Place(c, i), c, answer)).ToList();
        foreach (var (name, other) in new[] { ("fitted", answer.Advice.Fitted), ("yours", answer.Checked) })
        {
            if (other is not null)
            {
                var place = ranked.ToList().FindIndex(c => c.Set == other.Set);
                rows.Add(Row($"{name}: {(other.IsStocked ? Place(other, place) : "not in stock")}", other, answer));
            }
        }

        TextTable.Write([answer.Case.GearPairs.Count > 0 ? [.. s_head, "changed gear pairs"] : s_head, .. rows], output);
        var choices = ranked.Count(c => c.IsStocked);
        if (answer.Case.Combinations is > 0 and var searched)
        {
            output.WriteLine($"Searched: {Number(searched, "0")} combinations of gear pairs, drop gears and final drives. Listed are the fastest for each amount of work, and all with the fitted pairs.");
        }

        output.WriteLine(choices > FirstRows ? $"The first {FirstRows} of {choices} combinations in stock." : $"{choices} combinations in stock.");
        output.WriteLine();
        foreach (var line in Rests(answer))
        {
            output.WriteLine(line);
        }
    }

    private IEnumerable<string> Answer(GearingAnswer answer)
    {
        var advice = answer.Advice;
        var choices = answer.Ranking.Candidates.Count(c => c.IsStocked);
        yield return $"Fitted: {(advice.Fitted is { } fitted ? Gears(fitted) : "not known")}.";
        if (advice.Recommended is not { } best)
        {
            yield return $"Fit: none. None of the {choices} combinations in stock is suitable.";
            foreach (var shortfall in Eng.LimitShortfall.Of(answer.Ranking))
            {
                yield return $"  {shortfall.Count} exceed the {Limit(shortfall.Kind)} of {Quantity(shortfall.Limit)}, by least at {Quantity(shortfall.Least)}. {Remedy(shortfall)}";
            }

            yield break;
        }

        yield return advice.KeepsFitted ? $"Fit: keep what is fitted, {Gears(best)}." : $"Fit: {Gears(best, answer)}.";
        foreach (var line in advice.KeepsFitted ? [] : Change(best, answer))
        {
            yield return line;
        }

        if (!advice.KeepsFitted && advice.Fitted is { } old)
        {
            yield return old.IsUsable && advice.Gain is { } gain ? $"Gain: {Difference(gain.Value, gain)} a lap on the fitted gears."
                : old.IsFinished ? $"The fitted gears must not be used here: they exceed the {Limits(old)}."
                : "The fitted gears cannot complete the lap.";
        }

        yield return advice.AsGood.Count == 1
            ? $"No other of the {choices} combinations in stock is as fast."
            : $"Of {choices} combinations in stock, {advice.AsGood.Count} are equally fast within what the inputs can resolve. {(advice.KeepsFitted ? "The fitted one can stay." : "This one needs least work and spends least time on the limiter.")}";
        yield return $"Top speed: {Quantity(best.TopSpeed)} on {best.TopSpeedStraight} in gear {best.TopSpeedGear}, engine at {Quantity(best.EngineSpeedAtTop)}.";
        foreach (var line in Better(answer, best))
        {
            yield return line;
        }

        foreach (var caution in best.Cautions)
        {
            yield return $"Caution, {Gears(best, answer)}: {Words(caution)}";
        }

        if (answer.Checked is { } asked && asked.Set != best.Set)
        {
            yield return Compared(asked, answer);
            foreach (var caution in asked.Cautions)
            {
                yield return $"Caution, {Gears(asked)}: {Words(caution)}";
            }
        }
    }

    private static IEnumerable<string> Better(GearingAnswer answer, Eng.GearingCandidate best)
    {
        var better = answer.Advice.Better;
        foreach (var day in better)
        {
            yield return day.Loss is { } loss
                ? $"With {Change(day.Change)}: {Gears(day.Set, answer)} is better by {Difference(loss.Value, loss)} a lap."
                : $"With {Change(day.Change)}: {Gears(day.Set, answer)}; {Gears(best, answer)} cannot complete the lap.";
        }

        string[] same = [.. answer.Ranking.Changes.Where(c => !better.Any(b => b.Change == c.Change)).Select(c => Change(c.Change))];
        if (same.Length > 0)
        {
            yield return $"No other gears are clearly better with {string.Join(", ", same)}.";
        }

        if (answer.Ranking.ChangesLeftOut.Count > 0)
        {
            yield return $"Not calculated: {string.Join(", ", answer.Ranking.ChangesLeftOut.Select(Change))}.";
        }
    }

    private static string Compared(Eng.GearingCandidate asked, GearingAnswer answer)
    {
        if (asked.PassedLimits.Count > 0)
        {
            return $"Yours, {Gears(asked)}: must not be used here. It exceeds the {Limits(asked)}.";
        }

        return answer.Ranking.Difference(asked, answer.Advice.Recommended!) is not { } difference
            ? $"Yours, {Gears(asked)}: cannot complete the lap."
            : difference.IsResolved
                ? $"Yours, {Gears(asked)}: {Difference(UnitsNet.Duration.FromSeconds(Math.Abs(difference.Value.Seconds)), difference)} a lap {(difference.Value.Seconds > 0 ? "slower" : "faster")} than the recommended gears."
                : $"Yours, {Gears(asked)}: as good as the recommended gears ({Difference(difference.Value, difference)} a lap).";
    }

    private string[] Row(string place, Eng.GearingCandidate c, GearingAnswer answer) =>
    [
        place,
        Pair(c.DropPair),
        Final(c.FinalDrive),
        Time(c, answer),
        Quantity(c.TopSpeed),
        Quantity(c.EngineSpeedAtTop),
        Number(c.OnLimiter.Seconds, "0.0") + " s",
        string.Join(", ", c.CornersBetweenGears.Select(s => answer.Case.Track.Before(s)?.Corner).OfType<string>()) is { Length: > 0 } corners ? corners : "none",
        Limits(c),
        .. answer.Case.GearPairs.Count > 0 ? [Pairs(c, answer)] : Array.Empty<string>(),
    ];

    private static string Place(Eng.GearingCandidate c, int index) => c.PassedLimits.Count > 0 ? "do not use" : Number(index + 1, "0");

    private static string Time(Eng.GearingCandidate c, GearingAnswer answer) => !c.IsFinished ? "cannot complete the lap"
        : answer.Advice.Recommended is not { } best || answer.Ranking.Difference(c, best) is not { } difference ? string.Empty
        : c.Set == best.Set ? "recommended"
        : Difference(difference.Value, difference, withSign: true);

    private static IEnumerable<string> Rests(GearingAnswer answer)
    {
        var (car, guards) = (answer.Case.Setup.Car, answer.Case.Guards);
        var efficiency = answer.Case.Car.Vehicle.Spec is { MeshEfficiency: { } mesh, AxleEfficiency: { } axle }
            ? string.Create(CultureInfo.InvariantCulture, $"efficiency of gears {mesh:0.0 %} (25 teeth each) and final drive {axle:0.0 %}")
            : string.Create(CultureInfo.InvariantCulture, $"driveline efficiency {car.DrivelineEfficiency:0.0 %}");
        yield return string.Create(
            CultureInfo.InvariantCulture,
            $"Assumed: {efficiency}, tyre friction coefficient {car.Grip:0.00}, drag coefficient {car.DragCoefficient:0.00}, frontal area {car.FrontalArea.SquareMeters:0.00} m².");
        string?[] missing =
        [
            car.WheelInertia is null ? "wheel inertia (taken as none)" : null,
            car.Engine.Inertia is null ? "engine inertia (taken as none)" : null,
            guards.Propshaft is null ? "propshaft limit (not checked)" : null,
            guards.GearboxOutput is null ? "gearbox output limit (not checked)" : null,
            answer.Case.Setup.Tyre.SpeedSymbol is null ? "tyre speed rating (not checked)" : null,
        ];
        if (missing.OfType<string>().ToArray() is { Length: > 0 } names)
        {
            yield return $"Not recorded: {string.Join(", ", names)}.";
        }

        yield return "The makers' manuals and the event's regulations take precedence.";
    }

    private static IEnumerable<string> Change(Eng.GearingCandidate best, GearingAnswer answer)
    {
        if (GearChange.Of(answer.Case, best.Set) is not { } change)
        {
            yield break;
        }

        var time = change.Labour is { } labour
            ? $" {Number(labour.Hours, "0.#")} h {(change.BoxOut ? "at the bench, with the gearbox out of the car" : "with the gearbox in the car")}."
            : string.Empty;
        yield return $"To change: {Names(change.Pairs)}.{time}";
        foreach (var source in change.Pairs.GroupBy(p => p.Source).OrderBy(g => g.Key))
        {
            yield return source.Key switch
            {
                GearSource.Fitted => $"Already fitted, to be swapped over: {Names(source)}.",
                GearSource.Kit => $"In the owner's kit: {Names(source)}.",
                _ => $"On the workshop's shelf, to be bought or borrowed: {Names(source)}.",
            };
        }
    }

    private static string Names(IEnumerable<NewPair> pairs) => string.Join(", ", pairs.Select(p => p.What switch
    {
        ChangedGears.GearPair => $"gear {p.Gear} {p.Pair}",
        ChangedGears.DropGears => $"drop gears {p.Pair}",
        _ => $"final drive {p.Pair}",
    }));

    // The pairs in the box that differ from the fitted ones, before drop gears and final drive.
    private static string Gears(Eng.GearingCandidate c, GearingAnswer answer)
    {
        var pairs = Pairs(c, answer);
        return pairs.Length > 0 ? $"{pairs}, {Gears(c)}" : Gears(c);
    }

    private static string Pairs(Eng.GearingCandidate c, GearingAnswer answer)
    {
        var made = answer.Case;
        var gears = made.Car.Drivetrain.With(c.Set).Gears;
        return string.Join(", ", made.Car.Drivetrain.GearsThatDiffer(made.Fitted!, c.Set).Select(g => $"gear {g} {Pair(gears[g - 1].Pairs[0])}"));
    }

    private static string Limits(Eng.GearingCandidate c) => string.Join(", ", c.PassedLimits.Select(p => p.Change is { } change ? $"{Limit(p.Caution.Kind)} (with {Change(change)})" : Limit(p.Caution.Kind)));

    private static string Limit(Eng.GearingCautionKind kind) => kind switch
    {
        Eng.GearingCautionKind.PropshaftSpeed => "propshaft limit",
        Eng.GearingCautionKind.GearboxOutputSpeed => "gearbox output limit",
        Eng.GearingCautionKind.CornerOverRev => "rev limit in a corner",
        _ => "tyre speed rating",
    };

    private static string Remedy(Eng.LimitShortfall shortfall) => shortfall.Kind switch
    {
        Eng.GearingCautionKind.PropshaftSpeed => $"A final drive below {Number(shortfall.FinalDriveBelow!.Value, "0.00")}, or a propshaft with a higher limit, would help.",
        Eng.GearingCautionKind.GearboxOutputSpeed => $"A final drive below {Number(shortfall.FinalDriveBelow!.Value, "0.00")} would help.",
        Eng.GearingCautionKind.CornerOverRev => "Drop gears or a final drive with a lower ratio would help.",
        _ => "A tyre with a higher rating would help.",
    };

    private static string Change(Eng.ConditionChange change) => change.Key switch
    {
        "tow" => "a tow",
        "headwind" => "a headwind",
        "tailwind" => "a tailwind",
        "warm_day" => "a warm day",
        "worn_tyres" => "worn tyres",
        "slower_corners" => "corners 5 % slower",
        "faster_corners" => "corners 5 % faster",
        "slower_shifts" => "slower shifts",
        "less_grip" => "less grip",
        var other => other,
    };

    private string Words(Eng.GearingCaution caution) => caution.Kind switch
    {
        Eng.GearingCautionKind.TyreSpeed => $"the car reaches {Quantity(caution.Figure)}; the tyre is rated for {Quantity(caution.Limit)}. Do not use this gearing until the tyre maker and the regulations allow it.",
        Eng.GearingCautionKind.TyreSpeedOpenEnded => $"the car reaches {Quantity(caution.Figure)}; the tyre's speed symbol means only above {Quantity(caution.Limit)}. Ask the tyre maker before using this gearing.",
        Eng.GearingCautionKind.TyreSpeedNotKnown => $"the tyre has no speed symbol. Ask the tyre maker whether {Quantity(caution.Figure)} is allowed.",
        Eng.GearingCautionKind.PropshaftSpeed => $"the propshaft reaches {Quantity(caution.Figure)}; its limit is {Quantity(caution.Limit)}. Above its critical speed, a propshaft can fail. Do not use this gearing.",
        Eng.GearingCautionKind.GearboxOutputSpeed => $"the gearbox output reaches {Quantity(caution.Figure)}; its limit is {Quantity(caution.Limit)}. Do not use this gearing.",
        Eng.GearingCautionKind.CornerOverRev => $"at the fastest corner exit, top gear turns the engine at {Quantity(caution.Figure)}; the limiter is at {Quantity(caution.Limit)}. Every downshift for that corner over-revs the engine. Do not use this gearing.",
        Eng.GearingCautionKind.EngineAtLimiter => $"the engine reaches the limiter at {Quantity(caution.Figure)}.",
        Eng.GearingCautionKind.LimiterAboveEngineLimit => $"the limiter at {Quantity(caution.Figure)} is above the engine's limit of {Quantity(caution.Limit)}. Set the limiter lower before driving.",
        _ => $"the air correction of the torque is {Quantity(caution.Figure)}; the standard covers up to {Quantity(caution.Limit)}.",
    };

    private string Quantity(UnitsNet.IQuantity? quantity) => quantity switch
    {
        UnitsNet.Speed v when speed == SpeedUnit.MilesPerHour => $"{Number(v.MilesPerHour, "0")} mph ({Number(v.KilometersPerHour, "0")} km/h)",
        UnitsNet.Speed v => $"{Number(v.KilometersPerHour, "0")} km/h ({Number(v.MilesPerHour, "0")} mph)",
        UnitsNet.RotationalSpeed n => Number(n.RevolutionsPerMinute, "0") + " rpm",
        UnitsNet.Scalar s => Number(s.Amount, "0.00"),
        _ => "not known",
    };

    private static string Difference(UnitsNet.Duration time, Eng.TimeDifference difference, bool withSign = false)
    {
        var format = "0." + new string('0', difference.Decimals);
        var seconds = Math.Round(time.Seconds, difference.Decimals) + 0.0; // no minus before a zero
        return $"{(withSign && seconds > 0 ? "+" : "")}{Number(seconds, format)} ± {Number(difference.Expanded.Seconds, format)} s";
    }

    private string Wind(Eng.Wind? wind) => wind is null ? "calm"
        : wind.From is { } from ? $"wind {Quantity(wind.Speed)} from {Number(from.Degrees, "0")}°"
        : $"headwind {Quantity(wind.Speed)} everywhere";

    private static string Source(EventAir air) => air.Source == AirSource.Altitude ? "standard air at the venue's altitude" : "as given for the day";

    private static string Gears(Eng.GearingCandidate c) => c.DropPair is null ? Final(c.FinalDrive) : $"{Pair(c.DropPair)} with {Final(c.FinalDrive)}";

    private static string Pair(Eng.ToothPair? pair) => pair is null ? "none" : $"{pair} ({Number(pair.Ratio, "0.000")}{(pair.IsOverdrive ? ", overdrive" : "")})";

    private static string Final(Eng.FinalDrive final) => $"{final} ({Number(final.Ratio, "0.000")})";

    private static string Number(double value, string format) => value.ToString(format, CultureInfo.InvariantCulture);
}
