namespace Layshaft.Engineering.Gearing;

/// <summary>The standard by which an engine's output is corrected to reference air, all for spark ignition.</summary>
public enum PowerStandard
{
    /// <summary>No correction: the curve is that of the day.</summary>
    None,

    /// <summary>
    /// ISO 1585 / UN R85: α = (99 kPa/p_s)^1.2 · (T/298 K)^0.6, p_s the pressure of the dry air (from memory).
    /// The standard holds for α from 0.93 to 1.07.
    /// </summary>
    Iso1585,

    /// <summary>
    /// SAE J1349: CF = 1.180 · (990 mbar/p_d) · √((t + 273)/298) − 0.180, p_d the pressure of the dry air, mechanical
    /// efficiency taken as 85 % (from memory).
    /// </summary>
    SaeJ1349,

    /// <summary>The customary "STD" correction of dynamometers: CF = (29.92 inHg/p_d) · √((°F + 459.7)/519.7).</summary>
    Std,

    /// <summary>DIN 70020: (1013 mbar/p) · √(T/293 K), with the pressure of the moist air (from memory).</summary>
    Din70020,
}
