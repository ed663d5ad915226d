namespace Layshaft.Engineering.Gearing;

/// <summary>Why a gearing figure could not be worked out, as data: no figure is ever returned as NaN instead.</summary>
/// <param name="Kind">What is wrong.</param>
/// <param name="Subject">Which figure, as the book names it (<c>mass</c>, <c>torque_curve[3]</c>, a straight's name).</param>
/// <param name="Figure">The figure that was given or reached, in <paramref name="Unit"/>; null when there is none.</param>
/// <param name="Low">The least figure that would do, in <paramref name="Unit"/>.</param>
/// <param name="High">The greatest figure that would do, in <paramref name="Unit"/>.</param>
/// <param name="Unit">The unit of the figures; empty when they have none.</param>
/// <param name="Detail">What else there is to say, such as what to write instead.</param>
public sealed record GearingFault(
    GearingFaultKind Kind,
    string Subject,
    double? Figure = null,
    double? Low = null,
    double? High = null,
    string Unit = "",
    string Detail = "")
{
    /// <summary>The fault in a sentence for a technician: what is wrong, where, what to write instead.</summary>
    public string Message => GearingFaultText.Of(this);

    /// <inheritdoc/>
    public override string ToString() => Message;
}
