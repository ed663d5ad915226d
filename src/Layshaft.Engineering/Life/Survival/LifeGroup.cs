namespace Layshaft.Engineering.Life;

/// <summary>Lives under one heading, to be compared with others: by gear, by driver's experience, by supplier's batch.</summary>
/// <param name="Name">The heading.</param>
/// <param name="Sample">Its lives.</param>
public sealed record LifeGroup(string Name, LifeSample Sample);
