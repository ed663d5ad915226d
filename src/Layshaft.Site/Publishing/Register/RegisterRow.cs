namespace Layshaft.Site.Publishing.Register;

/// <summary>What is known of a file of the site that we wrote. A value in a column: a large site has hundreds of thousands.</summary>
internal readonly record struct RegisterRow
{
    /// <summary>Its bytes' hash.</summary>
    internal ContentHash Sha256 { get; init; }

    /// <summary>Its length in bytes.</summary>
    internal long Size { get; init; }

    /// <summary>Its time of change when we last saw it whole, in ticks; 0 where that is not known.</summary>
    internal long Modified { get; init; }

    /// <summary>The number of its group's mark, see <see cref="SiteRegister.MarkOf"/>; 0 where it has none.</summary>
    internal int Group { get; init; }
}
