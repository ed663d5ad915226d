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
    private static readonly string[] s_head = ["place", "drop gears (driven/driver)", "final drive (driven/driver)", "lost per lap", "to the ideal", "top speed", "where", "engine", "limiter", "shifts", "corners between gears"];

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
        output.WriteLine(ranked.Count > FirstRows ? $"The first {FirstRows} of {ranked.Count} choices in stock." : $"{ranked.Count} choices in stock.");
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
        c.IsFinished ? Number(answer.LossSeconds(c), "0.000") + " s" : "does not get round",
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
        yield return $"Recommended: {Gears(answer.Recommended)}, within {Number(Recommendation.Tie.Seconds, "0.000")} s a lap of the fastest; so close, the fitted final drive and the least time on the limiter decide.";
        foreach (var change in ranking.Changes)
        {
            var loss = change.LossOfPick is { } lost ? Number(lost.Seconds, "0.000") + " s a lap" : "the whole lap";
            yield return change.PickChanges
                ? $"With {Article(change.Change.Name)}: best is {Gears(change.Candidates[0])}; the fastest loses {loss}."
                : $"With {Article(change.Change.Name)}: the fastest stays the best.";
        }

        yield return $"Least to lose whatever the day brings: {Gears(ranking.Robust)}, at worst {Number(ranking.WorstRegretOfRobust.Seconds, "0.000")} s a lap.";
        var shown = answer.Checked ?? answer.Recommended;
        foreach (var caution in shown.Cautions)
        {
            yield return $"Caution, {Gears(shown)}: {Words(caution)}";
        }

        var car = answer.Case.Setup.Car;
        yield return string.Create(
            CultureInfo.InvariantCulture,
            $"Assumed: {car.DrivelineEfficiency:0.0 %} of the torque reaches the wheels, grip {car.Grip:0.00}, drag {car.DragCoefficient:0.00} on {car.FrontalArea.SquareMeters:0.00} m².");
        yield return "The makers' manuals and the event's regulations come first.";
    }

    private string Words(Eng.GearingCaution caution) => caution.Kind switch
    {
        Eng.GearingCautionKind.TyreSpeed => $"{Quantity(caution.Figure)} is more than the tyre's speed symbol stands for, {Quantity(caution.Limit)}.",
        Eng.GearingCautionKind.TyreSpeedOpenEnded => $"{Quantity(caution.Figure)}: the tyre's symbol says only more than {Quantity(caution.Limit)}; ask its maker.",
        Eng.GearingCautionKind.TyreSpeedNotKnown => $"the tyre has no speed symbol; its maker says whether {Quantity(caution.Figure)} is in order.",
        Eng.GearingCautionKind.PropshaftSpeed => $"the propshaft turns at {Quantity(caution.Figure)}, its limit is {Quantity(caution.Limit)}.",
        Eng.GearingCautionKind.GearboxOutputSpeed => $"the gearbox output turns at {Quantity(caution.Figure)}, its limit is {Quantity(caution.Limit)}.",
        Eng.GearingCautionKind.EngineAtLimiter => $"the car comes to the limiter, {Quantity(caution.Figure)}.",
        Eng.GearingCautionKind.LimiterAboveEngineLimit => $"the limiter at {Quantity(caution.Figure)} is above the engine's limit, {Quantity(caution.Limit)}.",
        _ => $"the air corrects the torque by {Quantity(caution.Figure)}; the standard is meant for up to {Quantity(caution.Limit)}.",
    };

    private string Quantity(UnitsNet.IQuantity? quantity) => quantity switch
    {
        UnitsNet.Speed v when speed == SpeedUnit.MilesPerHour => $"{Number(v.MilesPerHour, "0")} mph ({Number(v.KilometersPerHour, "0")} km/h)",
        UnitsNet.Speed v => $"{Number(v.KilometersPerHour, "0")} km/h ({Number(v.MilesPerHour, "0")} mph)",
        UnitsNet.RotationalSpeed n => Number(n.RevolutionsPerMinute, "0") + " rpm",
        UnitsNet.Scalar s => Number(s.Amount, "0.00"),
        _ => "not known",
    };

    private static string Source(EventAir air) => air.Source == AirSource.Altitude ? "standard air at the venue's altitude" : "as given for the day";

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
