using System.Text.Encodings.Web;
using System.Text.Json;
using Layshaft.Site.Assessment.Gearing;
using Eng = Layshaft.Engineering.Gearing;

namespace Layshaft.Cli.Terminal;

/// <summary>Writes a ranking of gears for other programs: every figure with its unit.</summary>
internal static class GearingJson
{
    private static readonly JsonSerializerOptions s_options = new() { WriteIndented = true, NewLine = "\n", Encoder = JavaScriptEncoder.UnsafeRelaxedJsonEscaping };

    public static string Write(GearingAnswer answer) => JsonSerializer.Serialize(
        new
        {
            car = answer.Case.Setup.Car.Id,
            venue = answer.Case.Venue.Id,
            unit = answer.Case.Unit.Id,
            gearbox = answer.Case.Box.Gearbox.Id,
            air_density = Figure(answer.Case.Air.Air.Density.KilogramsPerCubicMeter, "kg/m³"),
            driveline_efficiency = answer.Case.Car.Vehicle.Spec.MeshEfficiency is null ? answer.Case.Setup.Car.DrivelineEfficiency : (double?)null,
            mesh_efficiency = answer.Case.Car.Vehicle.Spec.MeshEfficiency,
            axle_efficiency = answer.Case.Car.Vehicle.Spec.AxleEfficiency,
            grip = answer.Case.Setup.Car.Grip,
            drag_area = Figure(answer.Case.Setup.Vehicle.Spec.DragArea.SquareMeters, "m²"),
            ideal_time = Figure(answer.Ranking.IdealTime.Seconds, "s", 1),
            recommended = answer.Advice.Recommended is { } best ? Name(best.Set) : null,
            fitted = answer.Advice.Fitted is { } fitted ? Name(fitted.Set) : null,
            keeps_fitted = answer.Advice.KeepsFitted,
            gain = answer.Advice.Gain is { } gain ? Of(gain) : null,
            combinations_searched = answer.Case.Combinations,
            change = answer.Advice is { KeepsFitted: false, Recommended: { } chosen } && GearChange.Of(answer.Case, chosen.Set) is { } change ? Of(change) : null,
            as_good = answer.Advice.AsGood.Select(c => Name(c.Set)),
            limits_exceeded = Eng.LimitShortfall.Of(answer.Ranking).Select(s => new
            {
                limit = s.Kind.ToString(),
                combinations = s.Count,
                final_drive_below = s.FinalDriveBelow is { } ratio ? Math.Round(ratio, 2) : (double?)null,
            }),
            @checked = answer.Checked is { } asked ? Of(asked, answer) : null,
            choices = answer.Ranking.Candidates.Select(c => Of(c, answer)),
            changes = answer.Ranking.Changes.Select(c => (c.Change, Better: answer.Advice.Better.FirstOrDefault(b => b.Change == c.Change))).Select(c => new
            {
                change = c.Change.Key,
                better = c.Better is { } better ? Name(better.Set.Set) : null,
                loss = c.Better?.Loss is { } loss ? Of(loss) : null,
            }),
        },
        s_options);

    private static object Of(Eng.GearingCandidate c, GearingAnswer answer) => new
    {
        gear_pairs = c.Set.Gears?.Pairs.Select(g => Mesh(g, g.Ratio)),
        drop_pair = c.DropPair is { } pair ? Mesh(pair, pair.Ratio) : null,
        final_drive = Mesh(c.FinalDrive.Teeth, c.FinalDrive.Ratio),
        finishes = c.IsFinished,
        in_stock = c.IsStocked,
        usable = c.IsUsable,
        difference_to_recommended = answer.Advice.Recommended is { } best && answer.Ranking.Difference(c, best) is { } difference ? Of(difference) : null,
        loss_to_ideal = c.IsFinished ? Figure(c.LossToIdeal.Seconds, "s", 1) : null,
        top_speed = Figure(c.TopSpeed.KilometersPerHour, "km/h"),
        top_speed_straight = c.TopSpeedStraight,
        top_speed_gear = c.TopSpeedGear,
        engine_speed_at_top = Figure(c.EngineSpeedAtTop.RevolutionsPerMinute, "rpm"),
        on_limiter = Figure(c.OnLimiter.Seconds, "s", 1),
        shifts_under_power = c.ShiftsPerLap,
        corners_between_gears = c.CornersBetweenGears.Select(s => answer.Case.Track.Before(s)?.Corner),
        limits_exceeded = c.PassedLimits.Select(p => new { limit = p.Caution.Kind.ToString(), change = p.Change?.Key }),
        cautions = c.Cautions.Select(x => x.Kind.ToString()),
    };

    private static object Name(Eng.GearSet set) => new { gear_pairs = set.Gears?.Pairs.Select(g => g.ToString()), drop_pair = set.DropPair?.ToString(), final_drive = set.FinalDrive.ToString() };

    private static object Of(GearChange change) => new
    {
        labour = change.Labour is { } labour ? Figure(labour.Hours, "h", 2) : null,
        box_out = change.BoxOut,
        pairs = change.Pairs.Select(p => new { what = p.What.ToString(), gear = p.Gear > 0 ? p.Gear : (int?)null, pair = p.Pair?.ToString(), source = p.Source.ToString() }),
    };

    private static object Of(Eng.TimeDifference time) => new
    {
        value = Math.Round(time.Value.Seconds, time.Decimals),
        expanded_uncertainty = Math.Round(time.Expanded.Seconds, time.Decimals),
        resolved = time.IsResolved,
        unit = "s",
    };

    private static object Mesh(Eng.ToothPair? teeth, double ratio) => new { driven = teeth?.Driven, driver = teeth?.Driver, ratio = Rounded(ratio) };

    private static object Figure(double value, string unit, int decimals = 6) => new { value = Math.Round(value, decimals), unit };

    private static double Rounded(double value) => Math.Round(value, 6);
}
