namespace Layshaft.Engineering.Settings;

/// <summary>Everything that a shim pack follows from.</summary>
/// <param name="Trial">The trial assembly.</param>
/// <param name="Target">Where the value has to lie.</param>
/// <param name="Effect">What a thicker pack does to it.</param>
/// <param name="Stock">Thicknesses at hand or sold; the shims of the trial pack belong in it when they may be used again.</param>
public sealed record ShimTask(TrialBuild Trial, TargetBand Target, ShimEffect Effect, IReadOnlyList<ShimStock> Stock)
{
    /// <summary>Most shims that may be stacked; <see langword="null"/> where the maker states no limit.</summary>
    public int? MostShims { get; init; }

    /// <summary>Most that may be ground off one shim, in micrometres; 100 where nothing else is said.</summary>
    public int MostGroundUm { get; init; } = 100;
}
