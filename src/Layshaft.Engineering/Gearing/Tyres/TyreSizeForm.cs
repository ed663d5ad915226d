namespace Layshaft.Engineering.Gearing;

/// <summary>The way in which a tyre size is written.</summary>
public enum TyreSizeForm
{
    /// <summary>Section width in mm / aspect ratio, rim in inches: <c>205/55R16</c> (ISO 4000-1).</summary>
    Metric,

    /// <summary>The same with <c>P</c> in front: <c>P205/55R16</c>.</summary>
    PassengerMetric,

    /// <summary>The same with <c>LT</c> in front: <c>LT235/85R16</c>.</summary>
    LightTruckMetric,

    /// <summary>Racing tyre, overall diameter × width − rim, or width/diameter − rim, in inches: <c>22.0x8.0-13</c>.</summary>
    RacingInch,

    /// <summary>Racing tyre, width / overall diameter in mm, rim in inches: <c>200/530R13</c>.</summary>
    RacingMetric,
}
