namespace Layshaft.Book.Reading;

/// <summary>Names that Windows keeps for devices, whatever ending follows them.</summary>
internal static class DeviceNames
{
    /// <summary>Whether a file's or folder's name is one of them.</summary>
    public static bool Holds(string name)
    {
        var stem = name.Split('.', 2)[0].Trim(' ').ToUpperInvariant();
        return stem is "CON" or "PRN" or "AUX" or "NUL"
            || (stem.Length == 4 && (stem.StartsWith("COM", StringComparison.Ordinal) || stem.StartsWith("LPT", StringComparison.Ordinal)) && char.IsAsciiDigit(stem[3]));
    }
}
