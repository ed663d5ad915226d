using System.Text.Json.Serialization;
using Layshaft.Site.Assessment.Lives;
using Layshaft.Site.Pages.ShopPages.Tallies;

namespace Layshaft.Site.Building.Parts;

/// <summary>How what is kept of a part is written.</summary>
[JsonSourceGenerationOptions(IgnoreReadOnlyProperties = true, DefaultIgnoreCondition = JsonIgnoreCondition.WhenWritingNull)]
[JsonSerializable(typeof(IReadOnlyList<UnitTally>))]
[JsonSerializable(typeof(IReadOnlyList<JobTally>))]
[JsonSerializable(typeof(IReadOnlyList<LifeTally>))]
[JsonSerializable(typeof(PartRest))]
internal sealed partial class PartText : JsonSerializerContext;
