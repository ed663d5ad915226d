using System.Globalization;

namespace Layshaft.Engineering.Gearing;

/// <summary>A final drive: crown wheel teeth over pinion teeth, or the number where the teeth are not known. Immutable.</summary>
public sealed record FinalDrive
{
    private FinalDrive(double ratio, ToothPair? teeth)
    {
        Ratio = ratio;
        Teeth = teeth;
    }

    /// <summary>Turns of the pinion for one of the crown wheel.</summary>
    public double Ratio { get; }

    /// <summary>Pinion (driver) and crown wheel (driven); null when the ratio was given as a number.</summary>
    public ToothPair? Teeth { get; }

    /// <summary>A final drive from its teeth.</summary>
    /// <param name="teeth">Pinion as the driver, crown wheel as the driven.</param>
    public static FinalDrive FromTeeth(ToothPair teeth)
    {
        ArgumentNullException.ThrowIfNull(teeth);
        return new FinalDrive(teeth.Ratio, teeth);
    }

    /// <summary>A final drive whose teeth are not known.</summary>
    /// <param name="ratio">Crown over pinion, 0.5 to 20.</param>
    public static Outcome<FinalDrive> FromRatio(double ratio)
    {
        var faults = new FaultList();
        faults.Range("final_drive", ratio, 0.5, 20);
        return faults.Finish(() => new FinalDrive(ratio, null));
    }

    /// <summary>The teeth as written, <c>crown/pinion</c>, or the ratio to three places.</summary>
    public override string ToString() => Teeth?.ToString() ?? Ratio.ToString("0.000", CultureInfo.InvariantCulture);
}
