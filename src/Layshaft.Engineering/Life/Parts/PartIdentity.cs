namespace Layshaft.Engineering.Life;

/// <summary>Which part is meant.</summary>
/// <param name="Part">
/// What it is and where it sits in a unit, for example <c>third gear dog ring</c>. Two parts alike in one unit need two
/// names (<c>layshaft bearing, front</c> and <c>rear</c>).
/// </param>
/// <param name="Serial">Serial number or mark of the single part, if it bears one: it can then be followed from unit to unit.</param>
/// <param name="Batch">Maker's batch, if known; it does not tell one part from another.</param>
public sealed record PartIdentity(string Part, string? Serial = null, string? Batch = null)
{
    /// <summary>Part and serial, for messages.</summary>
    /// <returns>For example <c>third gear dog ring (K-114)</c>.</returns>
    public override string ToString() => Serial is null ? Part : $"{Part} ({Serial})";
}
