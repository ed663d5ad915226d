using UnitsNet;

namespace Layshaft.Engineering.Settings;

/// <summary>A setting that a gearbox asks for.</summary>
/// <param name="Name">What is set, unique in its gearbox.</param>
/// <param name="Kind">What sort of setting it is.</param>
/// <param name="Low">Least value; <see langword="null"/> for none.</param>
/// <param name="High">Greatest value; <see langword="null"/> for none.</param>
public sealed record RequiredSetting(string Name, SettingKind Kind, IQuantity? Low, IQuantity? High);
