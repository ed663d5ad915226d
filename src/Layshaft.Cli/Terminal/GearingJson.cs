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
            ideal_time = Figure(answer.Ranking.IdealTime.Seconds, "s"),
            recommended = Name(answer.Recommended),
            @checked = answer.Checked is { } asked ? Of(asked, answer) : null,
            robust = Name(answer.Ranking.Robust),
            worst_loss_of_robust = Figure(answer.Ranking.WorstRegretOfRobust.Seconds, "s"),
            choices = answer.Ranking.Candidates.Select(c => Of(c, answer)),
            changes = answer.Ranking.Changes.Select(c => new
            {
                change = c.Change.Name,
                best = Name(c.Candidates[0]),
                loss_of_first_choice = c.LossOfPick is { } lost ? Figure(lost.Seconds, "s") : null,
            }),
        },
        s_options);

    private static object Of(Eng.GearingCandidate c, GearingAnswer answer) => new
    {
        drop_pair = c.DropPair is { } pair ? Mesh(pair, pair.Ratio) : null,
        final_drive = Mesh(c.FinalDrive.Teeth, c.FinalDrive.Ratio),
        finishes = c.IsFinished,
        straights_time = Figure(c.StraightsTime.Seconds, "s"),
        loss_to_best = c.IsFinished ? Figure(answer.LossSeconds(c), "s") : null,
        loss_to_ideal = c.IsFinished ? Figure(c.LossToIdeal.Seconds, "s") : null,
        top_speed = Figure(c.TopSpeed.KilometersPerHour, "km/h"),
        top_speed_straight = c.TopSpeedStraight,
        top_speed_gear = c.TopSpeedGear,
        engine_speed_at_top = Figure(c.EngineSpeedAtTop.RevolutionsPerMinute, "rpm"),
        on_limiter = Figure(c.OnLimiter.Seconds, "s"),
        shifts_under_power = c.ShiftsPerLap,
        corners_between_gears = c.CornersBetweenGears.Select(s => Course.CornerBefore(answer.Case.Venue, s)),
        cautions = c.Cautions.Select(x => x.Kind.ToString()),
    };

    private static object Name(Eng.GearingCandidate c) => new { drop_pair = c.DropPair?.ToString(), final_drive = c.FinalDrive.ToString() };

    private static object Mesh(Eng.ToothPair? teeth, double ratio) => new { driven = teeth?.Driven, driver = teeth?.Driver, ratio = Rounded(ratio) };

    private static object Figure(double value, string unit) => new { value = Rounded(value), unit };

    private static double Rounded(double value) => Math.Round(value, 6);
}
