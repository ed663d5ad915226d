using System.Text.Json.Serialization;
using Layshaft.Site.Assessment.Lives;
using Layshaft.Site.Pages.ShopPages.Tallies;

namespace Layshaft.Site.Building.Slices;

/// <summary>How the tally of a slice is written.</summary>
[JsonSourceGenerationOptions(IgnoreReadOnlyProperties = true, DefaultIgnoreCondition = JsonIgnoreCondition.WhenWritingNull)]
[JsonSerializable(typeof(IReadOnlyList<UnitTally>))]
[JsonSerializable(typeof(IReadOnlyList<JobTally>))]
[JsonSerializable(typeof(IReadOnlyList<LifeTally>))]
internal sealed partial class TallyJson : JsonSerializerContext;
