namespace Layshaft.Engineering.Measurement;

/// <summary>The verdict on a part, from best to worst.</summary>
public enum Grade
{
    /// <summary>Goes back as it is.</summary>
    Reuse,

    /// <summary>Goes back, and is looked at early.</summary>
    Watch,

    /// <summary>Is replaced.</summary>
    Renew,
}
