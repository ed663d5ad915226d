using UnitsNet;

namespace Layshaft.Engineering.Gearing;

/// <summary>What one engagement of the dogs turns into heat, noise and wear.</summary>
public static class DogImpact
{
    /// <summary>
    /// ½ · J₁J₂/(J₁ + J₂) · Δω² (perfectly inelastic engagement; any textbook of mechanics). J₁ is the input side brought to the
    /// mainshaft through the engaged gear, J₂ the output side.
    /// </summary>
    /// <param name="car">The car, with the gears that are fitted.</param>
    /// <param name="gear">The gear that is engaged, from 1.</param>
    /// <param name="difference">Speed difference at the dogs.</param>
    /// <param name="inertias">The inertias on the two sides.</param>
    /// <exception cref="ArgumentOutOfRangeException">There is no such gear.</exception>
    public static Energy Of(Car car, int gear, RotationalSpeed difference, DogInertias inertias)
    {
        ArgumentNullException.ThrowIfNull(car);
        ArgumentNullException.ThrowIfNull(inertias);
        double radPerS = difference.RadiansPerSecond;
        return Energy.FromJoules(0.5 * InertiaKgM2(new CarModel(car), car.Drivetrain, gear, inertias) * radPerS * radPerS);
    }

    /// <summary>J₁J₂/(J₁ + J₂) at the mainshaft.</summary>
    internal static double InertiaKgM2(CarModel model, Drivetrain drivetrain, int gear, DogInertias inertias)
    {
        double ratio = drivetrain.RatioToMainshaft(gear);
        double input = inertias.InputSide.KilogramSquareMeters * ratio * ratio;
        double afterMainshaft = drivetrain.OverallRatio(gear) / ratio;
        double output = inertias.OutputSide?.KilogramSquareMeters
            ?? (((model.MassKg * model.StaticRadiusM * model.StaticRadiusM) + model.WheelInertiaKgM2) / (afterMainshaft * afterMainshaft));
        return input * output / (input + output);
    }
}
