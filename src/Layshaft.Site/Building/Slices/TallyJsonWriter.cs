using System.Text.Json.Serialization;
using Layshaft.Site.Assessment.Lives;
using Layshaft.Site.Pages.ShopPages.Tallies;

namespace Layshaft.Site.Building.Slices;

/// <summary>
/// How the tally of a slice is written, the same as <see cref="TallyJson"/> has it. It only writes: what reading takes would be compiled at
/// each publish in which anything changed.
/// </summary>
[JsonSourceGenerationOptions(GenerationMode = JsonSourceGenerationMode.Serialization, IgnoreReadOnlyProperties = true, DefaultIgnoreCondition = JsonIgnoreCondition.WhenWritingNull)]
[JsonSerializable(typeof(IReadOnlyList<UnitTally>))]
[JsonSerializable(typeof(IReadOnlyList<JobTally>))]
[JsonSerializable(typeof(IReadOnlyList<LifeTally>))]
internal sealed partial class TallyJsonWriter : JsonSerializerContext;
