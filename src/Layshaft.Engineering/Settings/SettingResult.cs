using Layshaft.Engineering.Measurement;

namespace Layshaft.Engineering.Settings;

/// <summary>One setting against its band.</summary>
/// <param name="Required">What was asked for.</param>
/// <param name="Recorded">What was recorded; <see langword="null"/> where nothing was.</param>
/// <param name="Status">How it came out.</param>
/// <param name="BandTooNarrow">
/// Whether the band is narrower than the whole uncertainty interval, so that no value could be proven inside: a better instrument is needed.
/// </param>
public sealed record SettingResult(RequiredSetting Required, MeasuredQuantity? Recorded, SettingStatus Status, bool BandTooNarrow);
