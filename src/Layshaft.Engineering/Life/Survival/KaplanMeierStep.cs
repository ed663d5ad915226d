namespace Layshaft.Engineering.Life;

/// <summary>One step of a Kaplan–Meier curve, at a use at which something failed.</summary>
/// <param name="At">Use since new.</param>
/// <param name="AtRisk">Units that had reached this use still good, those censored at it included.</param>
/// <param name="Failed">Units that failed at it.</param>
/// <param name="Survival">Share still good after it.</param>
/// <param name="StandardError">Greenwood's standard error of <paramref name="Survival"/>; <c>null</c> once none is left.</param>
/// <param name="Limits">Pointwise limits; open on both sides once none is left.</param>
public sealed record KaplanMeierStep(double At, int AtRisk, int Failed, double Survival, double? StandardError, Bounds Limits);
