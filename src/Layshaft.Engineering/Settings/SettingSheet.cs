using Layshaft.Engineering.Measurement;

namespace Layshaft.Engineering.Settings;

/// <summary>All settings of a build against what the gearbox asks for.</summary>
/// <param name="Results">One result for each setting asked for, in their order.</param>
/// <param name="NotAskedFor">Names that were recorded and are not asked for, in ordinal order: a slip in a name, or one setting more than needed.</param>
public sealed record SettingSheet(IReadOnlyList<SettingResult> Results, IReadOnlyList<string> NotAskedFor)
{
    /// <summary>Settings asked for and not recorded.</summary>
    public IEnumerable<SettingResult> Missing => Results.Where(result => result.Status == SettingStatus.NotRecorded);

    /// <summary>Whether every setting with a band is recorded and proven inside it.</summary>
    public bool IsComplete => Results.All(result => result.Status is SettingStatus.Inside or SettingStatus.NoBand);

    /// <summary>Checks recorded settings.</summary>
    /// <param name="required">What the gearbox asks for; names are unique.</param>
    /// <param name="recorded">What the builder recorded, by name.</param>
    /// <returns>The sheet.</returns>
    /// <exception cref="ArgumentException">A name is asked for twice, a band is upside down, or kinds of quantity are mixed.</exception>
    public static SettingSheet Check(
        IReadOnlyList<RequiredSetting> required, IReadOnlyDictionary<string, MeasuredQuantity> recorded)
    {
        ArgumentNullException.ThrowIfNull(required);
        ArgumentNullException.ThrowIfNull(recorded);
        var names = new HashSet<string>(StringComparer.Ordinal);
        foreach (var setting in required)
        {
            if (!names.Add(setting.Name))
            {
                throw new ArgumentException($"the setting \"{setting.Name}\" is listed twice", nameof(required));
            }
        }

        return new SettingSheet(
            [.. required.Select(setting => Check(setting, recorded.GetValueOrDefault(setting.Name)))],
            [.. recorded.Keys.Where(name => !names.Contains(name)).Order(StringComparer.Ordinal)]);
    }

    /// <summary>Checks one setting.</summary>
    /// <param name="required">What is asked for.</param>
    /// <param name="recorded">What was recorded; <see langword="null"/> where nothing was.</param>
    /// <returns>How it came out.</returns>
    /// <exception cref="ArgumentException">The band is upside down, or kinds of quantity are mixed.</exception>
    public static SettingResult Check(RequiredSetting required, MeasuredQuantity? recorded)
    {
        ArgumentNullException.ThrowIfNull(required);
        if (recorded is null)
        {
            return new SettingResult(required, null, SettingStatus.NotRecorded, false);
        }

        var (low, high) = (required.Low?.In(recorded.Unit), required.High?.In(recorded.Unit));
        if (low > high)
        {
            throw new ArgumentException($"the band of \"{required.Name}\" is reversed: write the smaller value as the low one", nameof(required));
        }

        if (low is null && high is null)
        {
            return new SettingResult(required, recorded, SettingStatus.NoBand, false);
        }

        // A wrench sets a tightening torque and does not measure it: the set torque itself is inside its band or outside.
        var (uncertainty, resolution) = required.Kind == SettingKind.TighteningTorque
            ? (0, 0)
            : (recorded.Number.ExpandedUncertainty, recorded.Number.Resolution);
        var status = BandDecision.Of(recorded.Number.Value, uncertainty, low, high, resolution) switch
        {
            Conformity.Inside => SettingStatus.Inside,
            Conformity.Outside => SettingStatus.Outside,
            _ => SettingStatus.TooCloseToCall,
        };
        return new SettingResult(required, recorded, status, high - low < 2 * uncertainty);
    }
}
