namespace Layshaft.Site.Publishing;

/// <summary>The shop's secret, or why there is none.</summary>
/// <param name="Secret">The secret; null exactly when there is a problem.</param>
/// <param name="Problem">What is wrong and what to do.</param>
/// <param name="Warning">What should be put right although the secret can be used.</param>
public sealed record ShopSecretResult(ShopSecret? Secret, string? Problem, string? Warning);
