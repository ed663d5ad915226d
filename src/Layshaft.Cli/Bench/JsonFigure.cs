using System.Text.Json;
using System.Text.Json.Nodes;
using Layshaft.Engineering.Measurement;
using UnitsNet;
using UnitsNet.Units;

namespace Layshaft.Cli.Bench;

/// <summary>Writes figures for other programs: a number and its unit.</summary>
internal static class JsonFigure
{
    private static readonly JsonSerializerOptions Options = new() { WriteIndented = true, NewLine = "\n", Encoder = System.Text.Encodings.Web.JavaScriptEncoder.UnsafeRelaxedJsonEscaping };

    /// <summary>A length in millimetres, to a tenth of a micrometre.</summary>
    public static JsonObject Of(Length length) => new() { ["value"] = Rounded(length.Millimeters), ["unit"] = "mm" };

    /// <summary>A measured length with its expanded uncertainty, null where that is not known.</summary>
    public static JsonObject Of(MeasuredQuantity measured)
    {
        var number = measured.In(LengthUnit.Millimeter).Number;
        return new JsonObject
        {
            ["value"] = Rounded(number.Value),
            ["expanded_uncertainty"] = number.UncertaintyIsKnown ? Rounded(number.ExpandedUncertainty) : null,
            ["unit"] = "mm",
        };
    }

    /// <summary>The text of a document.</summary>
    public static string Text(JsonObject document) => document.ToJsonString(Options);

    private static double Rounded(double mm) => Math.Round(mm, 4, MidpointRounding.AwayFromZero);
}
