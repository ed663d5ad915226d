using System.Globalization;
using Layshaft.Book.Records;
using Layshaft.Site.Assessment.Gearing;
using Eng = Layshaft.Engineering.Gearing;

namespace Layshaft.Cli.Terminal;

/// <summary>Writes a ranking of gears as a table with its reasons.</summary>
/// <param name="speed">Which unit of speed comes first.</param>
internal sealed class GearingLines(SpeedUnit speed)
{
    private const int FirstRows = 12;
    private static readonly string[] s_head = ["rank", "drop gears (driven/driver)", "final drive (driven/driver)", "loss per lap", "loss to ideal", "top speed", "where", "engine", "on limiter", "upshifts", "corners between gears"];

    public void Write(GearingAnswer answer, TextWriter output)
    {
        var ranked = answer.Ranking.Candidates;
        output.WriteLine($"{answer.Case.Setup.Car.Name} at {answer.Case.Venue.Name}, {answer.Case.Box.Gearbox.Name} ({answer.Case.Unit.Serial}), air of {Number(answer.Case.Air.Air.Density.KilogramsPerCubicMeter, "0.000")} kg/m³ ({Source(answer.Case.Air)})");
        output.WriteLine();
        var rows = ranked.Take(FirstRows).Select((c, i) => Row(Number(i + 1, "0"), c, answer)).ToList();
        if (answer.Checked is { } asked)
        {
            var place = ranked.ToList().FindIndex(c => c.DropPair == asked.DropPair && c.FinalDrive == asked.FinalDrive);
            rows.Add(Row(place < 0 ? "not in stock" : $"yours: {place + 1}", asked, answer));
        }

        Table([s_head, .. rows], output);
        output.WriteLine(ranked.Count > FirstRows ? $"The best {FirstRows} of {ranked.Count} choices in stock." : $"{ranked.Count} choices in stock.");
        output.WriteLine();
        foreach (var line in Reasons(answer))
        {
            output.WriteLine(line);
        }
    }

    private string[] Row(string place, Eng.GearingCandidate c, GearingAnswer answer) =>
    [
        place,
        Pair(c.DropPair),
        Final(c.FinalDrive),
        c.IsFinished ? Number(answer.LossSeconds(c), "0.000") + " s" : "cannot complete the lap",
        c.IsFinished ? Number(c.LossToIdeal.Seconds, "0.000") + " s" : "",
        Quantity(c.TopSpeed),
        $"{c.TopSpeedStraight}, gear {c.TopSpeedGear}",
        Number(c.EngineSpeedAtTop.RevolutionsPerMinute, "0") + " rpm",
        Number(c.OnLimiter.Seconds, "0.00") + " s",
        Number(c.ShiftsPerLap, "0"),
        string.Join(", ", c.CornersBetweenGears.Select(s => Course.CornerBefore(answer.Case.Venue, s)).OfType<string>()) is { Length: > 0 } corners ? corners : "none",
    ];

    private IEnumerable<string> Reasons(GearingAnswer answer)
    {
        var ranking = answer.Ranking;
        yield return $"Recommended: {Gears(answer.Recommended)}, within {Number(Recommendation.Tie.Seconds, "0.000")} s a lap of the fastest. Within that margin, the fitted final drive and the least time on the limiter are preferred.";
        foreach (var change in ranking.Changes)
        {
            var loss = change.LossOfPick is { } lost ? $"loses {Number(lost.Seconds, "0.000")} s a lap" : "cannot complete the lap";
            yield return change.PickChanges
                ? $"With {Article(change.Change.Name)}: {Gears(change.Candidates[0])} is the best; the fastest above {loss}."
                : $"With {Article(change.Change.Name)}: the fastest above is still the best.";
        }

        yield return $"Safest choice in unknown conditions: {Gears(ranking.Robust)}, which loses at most {Number(ranking.WorstRegretOfRobust.Seconds, "0.000")} s a lap.";
        var shown = answer.Checked ?? answer.Recommended;
        foreach (var caution in shown.Cautions)
        {
            yield return $"Caution, {Gears(shown)}: {Words(caution)}";
        }

        var car = answer.Case.Setup.Car;
        var efficiency = answer.Case.Car.Vehicle.Spec is { MeshEfficiency: { } mesh, AxleEfficiency: { } axle }
            ? string.Create(CultureInfo.InvariantCulture, $"efficiency of gears {mesh:0.0 %} (25 teeth each) and final drive {axle:0.0 %}")
            : string.Create(CultureInfo.InvariantCulture, $"driveline efficiency {car.DrivelineEfficiency:0.0 %}");
        yield return string.Create(
            CultureInfo.InvariantCulture,
            $"Assumed: {efficiency}, tyre friction coefficient {car.Grip:0.00}, drag coefficient {car.DragCoefficient:0.00}, frontal area {car.FrontalArea.SquareMeters:0.00} m².");
        yield return "The makers' manuals and the event's regulations take precedence.";
    }

    private string Words(Eng.GearingCaution caution) => caution.Kind switch
    {
        Eng.GearingCautionKind.TyreSpeed => $"the car reaches {Quantity(caution.Figure)}; the tyre is rated for {Quantity(caution.Limit)}. Do not use this gearing until the tyre maker and the regulations allow it.",
        Eng.GearingCautionKind.TyreSpeedOpenEnded => $"the car reaches {Quantity(caution.Figure)}; the tyre's speed symbol means only above {Quantity(caution.Limit)}. Ask the tyre maker before using this gearing.",
        Eng.GearingCautionKind.TyreSpeedNotKnown => $"the tyre has no speed symbol. Ask the tyre maker whether {Quantity(caution.Figure)} is allowed.",
        Eng.GearingCautionKind.PropshaftSpeed => $"the propshaft reaches {Quantity(caution.Figure)}; its limit is {Quantity(caution.Limit)}. Above its critical speed, a propshaft can fail. Do not use this gearing.",
        Eng.GearingCautionKind.GearboxOutputSpeed => $"the gearbox output reaches {Quantity(caution.Figure)}; its limit is {Quantity(caution.Limit)}. Do not use this gearing.",
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

    private static string Source(EventAir air) => air.Source == AirSource.Altitude ? "standard air at the venue's altitude" : "as given for the event";

    private static string Article(string change) => change == "worn tyres" ? change : "a " + change;

    private static string Gears(Eng.GearingCandidate c) => c.DropPair is null ? Final(c.FinalDrive) : $"{Pair(c.DropPair)} with {Final(c.FinalDrive)}";

    private static string Pair(Eng.ToothPair? pair) => pair is null ? "none" : $"{pair} ({Number(pair.Ratio, "0.000")}{(pair.IsOverdrive ? ", overdrive" : "")})";

    private static string Final(Eng.FinalDrive final) => $"{final} ({Number(final.Ratio, "0.000")})";

    private static string Number(double value, string format) => value.ToString(format, CultureInfo.InvariantCulture);

    private static void Table(List<string[]> rows, TextWriter output)
    {
        int[] widths = [.. Enumerable.Range(0, s_head.Length).Select(i => rows.Max(r => r[i].Length))];
        foreach (var row in rows)
        {
            output.WriteLine(string.Join("  ", row.Select((cell, i) => cell.PadRight(widths[i]))).TrimEnd());
        }
    }
}
