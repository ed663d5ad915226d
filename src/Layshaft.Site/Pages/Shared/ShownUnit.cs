using Layshaft.Book.Records;
using Layshaft.Book.Values;
using UnitsNet;

namespace Layshaft.Site.Pages.Shared;

/// <summary>The unit in which charts and data show measured sizes: the same as stands first in the words.</summary>
/// <param name="Symbol">Its symbol.</param>
/// <param name="Of">The number in it.</param>
public sealed record ShownUnit(string Symbol, Func<IQuantity, double> Of)
{
    /// <summary>The unit for quantities like this one.</summary>
    public static ShownUnit For(IQuantity like, Composition composition)
    {
        ArgumentNullException.ThrowIfNull(composition);
        var units = composition.Shop.Units;
        return like switch
        {
            Length => units.Length switch
            {
                LengthUnit.Inches => new("in", q => ((Length)q).Inches),
                LengthUnit.Thousandths => new("thou", q => ((Length)q).Mils),
                _ => new("mm", q => ((Length)q).Millimeters),
            },
            Torque => units.Torque == TorqueUnit.PoundForceFeet ? new("lbf·ft", q => ((Torque)q).PoundForceFeet) : new("N·m", q => ((Torque)q).NewtonMeters),
            Force => new("N", q => ((Force)q).Newtons),
            Angle => new("°", q => ((Angle)q).Degrees),
            Temperature => new("°C", q => ((Temperature)q).DegreesCelsius),
            Mass => new("kg", q => ((Mass)q).Kilograms),
            _ => throw new ArgumentException("A book has no quantity of this kind.", nameof(like)),
        };
    }

    /// <summary>The number of an SI size of the same kind.</summary>
    public double OfSi(IQuantity like, double si) => Of(like.Like(si));
}
