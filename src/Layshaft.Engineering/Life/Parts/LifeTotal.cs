namespace Layshaft.Engineering.Life;

/// <summary>What one life comes to, without the entries that tell of it: all that statistics need.</summary>
/// <param name="Total">Carried use and all stays; hours, kilometres and events stay apart.</param>
/// <param name="IsWhole">Whether that is the part's whole use since new.</param>
/// <param name="IsDoubtful">Whether a contradiction touches it.</param>
/// <param name="End">Where it stands.</param>
/// <param name="Reason">Why it was renewed, when it was.</param>
public sealed record LifeTotal(UseTally Total, bool IsWhole, bool IsDoubtful, LifeEnd End, RenewalReason Reason)
{
    /// <summary>What a life comes to.</summary>
    /// <param name="life">The life.</param>
    public static LifeTotal Of(PartLife life)
    {
        ArgumentNullException.ThrowIfNull(life);
        return new LifeTotal(life.Total, life.TotalIsWhole, life.IsDoubtful, life.End, life.Reason);
    }
}
