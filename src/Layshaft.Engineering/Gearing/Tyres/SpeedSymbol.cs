using UnitsNet;

namespace Layshaft.Engineering.Gearing;

/// <summary>A tyre's speed symbol and the speed that it stands for (ISO 4000-1; UN R30, 2.29; from memory). Immutable.</summary>
/// <param name="Symbol">The letter, or <c>ZR</c>, or <c>(Y)</c>.</param>
/// <param name="Limit">The speed that the symbol stands for.</param>
/// <param name="IsOpenEnded">
/// Whether the tyre is made for more than <paramref name="Limit"/>, how much more being for the tyre's maker to say
/// (<c>ZR</c> without a service description: above 240 km/h; <c>(Y)</c>: above 300 km/h).
/// </param>
public sealed record SpeedSymbol(string Symbol, Speed Limit, bool IsOpenEnded)
{
    private static readonly (string Symbol, int KmPerHour)[] s_letters =
    [
        ("J", 100), ("K", 110), ("L", 120), ("M", 130), ("N", 140), ("P", 150), ("Q", 160), ("R", 170), ("S", 180),
        ("T", 190), ("U", 200), ("H", 210), ("V", 240), ("W", 270), ("Y", 300),
    ];

    /// <summary>The symbols in order of speed: J to Y, then ZR and (Y).</summary>
    public static IReadOnlyList<SpeedSymbol> All { get; } =
    [
        .. s_letters.Select(pair => new SpeedSymbol(pair.Symbol, Speed.FromKilometersPerHour(pair.KmPerHour), false)),
        new SpeedSymbol("ZR", Speed.FromKilometersPerHour(240), true),
        new SpeedSymbol("(Y)", Speed.FromKilometersPerHour(300), true),
    ];

    /// <summary>The symbol of that name; null when there is none.</summary>
    /// <param name="symbol">The letter, <c>ZR</c> or <c>(Y)</c>, in capitals.</param>
    public static SpeedSymbol? Find(string symbol) => All.FirstOrDefault(known => known.Symbol == symbol);

    /// <inheritdoc/>
    public override string ToString() => Symbol;
}
