namespace Layshaft.Engineering.Gearing;

/// <summary>What a rolling circumference rests on; a page prints it beside the figure.</summary>
public enum CircumferenceBasis
{
    /// <summary>Measured on the car, loaded and at pressure: overrules every rule.</summary>
    Measured,

    /// <summary>3.05 × the design diameter of UN R30.</summary>
    DesignDiameter,

    /// <summary>3.05 × the nominal diameter: racing sizes, for which there is no design diameter. Measure where it matters.</summary>
    NominalDiameter,
}
