namespace Layshaft.Engineering.Life;

/// <summary>Which flanks are worn most. What each points to is common practice of the trade, no source.</summary>
public enum WornSide
{
    /// <summary>The sides were not recorded, or not on all of the gears.</summary>
    NotKnown,

    /// <summary>Drive side. On an upshift the dogs of the next gear turn too fast and strike with it.</summary>
    Drive,

    /// <summary>Coast side. On a downshift the dogs of the next gear turn too slowly and strike with it; it also carries the overrun.</summary>
    Coast,

    /// <summary>Neither side clearly.</summary>
    BothAlike,
}
