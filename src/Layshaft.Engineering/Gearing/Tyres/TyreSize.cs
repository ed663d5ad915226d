using System.Diagnostics.CodeAnalysis;
using UnitsNet;

namespace Layshaft.Engineering.Gearing;

/// <summary>A tyre size read from its code. Immutable.</summary>
public sealed record TyreSize
{
    internal TyreSize(string text) => Text = text;

    /// <summary>The code as it was read, blanks at the ends removed.</summary>
    public string Text { get; }

    /// <summary>How the code is written.</summary>
    public TyreSizeForm Form { get; internal init; }

    /// <summary>Nominal section width (tread width for most racing sizes: makers differ).</summary>
    public Length SectionWidth { get; internal init; }

    /// <summary>Section height in per cent of section width; null for racing sizes, which give the diameter instead.</summary>
    public int? AspectRatio { get; internal init; }

    /// <summary>Nominal rim diameter, its code × 25.4 mm.</summary>
    public Length RimDiameter { get; internal init; }

    /// <summary>Whether the code says radial ply (<c>R</c>, <c>ZR</c>); a dash, <c>D</c> or <c>B</c> does not.</summary>
    public bool IsRadial { get; internal init; }

    /// <summary>Load index of a single tyre; null when the code has none.</summary>
    public int? LoadIndex { get; internal init; }

    /// <summary>Speed symbol; null when the code has none.</summary>
    public SpeedSymbol? SpeedSymbol { get; internal init; }

    /// <summary>
    /// Nominal overall diameter, unloaded: rim + 2 × width × aspect / 100, or as written for racing sizes. A real tyre
    /// differs by model.
    /// </summary>
    public Length NominalDiameter { get; internal init; }

    /// <summary>
    /// Design diameter by UN R30, 6.1.2 (from memory): D = d + 2H, H = 0.01·S·Ra rounded to the millimetre, d the rim in
    /// whole millimetres. Null for racing sizes.
    /// </summary>
    public Length? DesignDiameter { get; internal init; }

    /// <summary>Reads a size code strictly.</summary>
    /// <param name="text">The code, such as <c>205/55R16 91V</c>.</param>
    /// <returns>The size, or one fault that says what to write instead.</returns>
    public static Outcome<TyreSize> Parse(string text)
    {
        ArgumentNullException.ThrowIfNull(text);
        return TyreSizeReader.Read(text.Trim());
    }

    /// <summary>Reads a size code strictly.</summary>
    /// <param name="text">The code, such as <c>205/55R16 91V</c>.</param>
    /// <param name="size">The size; null when the code cannot be read.</param>
    /// <param name="reason">Why not, in a sentence for the technician; null when it was read.</param>
    /// <returns>Whether the code was read.</returns>
    public static bool TryParse(string text, [NotNullWhen(true)] out TyreSize? size, [NotNullWhen(false)] out string? reason)
    {
        Outcome<TyreSize> outcome = Parse(text);
        size = outcome.Value;
        reason = size is null ? outcome.Faults[0].Message : null;
        return size is not null;
    }

    /// <inheritdoc/>
    public override string ToString() => Text;
}
