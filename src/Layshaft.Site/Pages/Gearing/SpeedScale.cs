using Layshaft.Site.Charts;
using UnitsNet;

namespace Layshaft.Site.Pages.Gearing;

/// <summary>Road speed on a chart's axis: the shop's unit below, the other one along the top.</summary>
/// <param name="IsMetric">Whether km/h stands first.</param>
/// <param name="Axis">The lower axis.</param>
/// <param name="Second">The axis along the top.</param>
internal sealed record SpeedScale(bool IsMetric, Axis Axis, SecondAxis Second)
{
    private const double KilometresPerMile = 1.609344;

    public static SpeedScale Of(Composition composition)
    {
        var isMetric = composition.Figures.Speed(Speed.Zero).Unit == "km/h";
        string Format(double value) => composition.Figures.Number(value).Text;
        var (metric, imperial) = (composition.Say("gearing.axis.km_h"), composition.Say("gearing.axis.mph"));
        return isMetric
            ? new SpeedScale(true, new Axis(metric, Format), new SecondAxis(imperial, Format, 1 / KilometresPerMile))
            : new SpeedScale(false, new Axis(imperial, Format), new SecondAxis(metric, Format, KilometresPerMile));
    }

    public double At(Speed speed) => IsMetric ? speed.KilometersPerHour : speed.MilesPerHour;
}
