namespace Layshaft.Engineering.Life;

/// <summary>
/// A stretch of usage in which the curve comes down. Between <paramref name="From"/> and <paramref name="To"/> the inspections
/// do not show how it does so.
/// </summary>
/// <param name="From">Usage since new at which it begins to come down.</param>
/// <param name="To">Usage by which it has come down; equal to <paramref name="From"/> where failures happened at a known moment.</param>
/// <param name="Survival">Share still good from <paramref name="To"/> on.</param>
public sealed record TurnbullStep(double From, double To, double Survival);
