using Layshaft.Engineering.Measurement;
using UnitsNet;
using UnitsNet.Units;

namespace Layshaft.Engineering.Tests.Measurement;

public class QuantityUnitTests
{
    public static TheoryData<Type> Kinds() => [typeof(LengthUnit), typeof(TorqueUnit), typeof(ForceUnit), typeof(AngleUnit), typeof(MassUnit), typeof(PressureUnit)];

    [Theory]
    [MemberData(nameof(Kinds))]
    public void A_quantity_made_from_number_and_unit_is_the_one_that_the_units_library_makes(Type kind)
    {
        Assert.All(Enum.GetValues(kind).Cast<Enum>(), unit => Assert.Equal(Quantity.From(1.25, unit), QuantityUnit.Of(1.25, unit)));
    }
}
