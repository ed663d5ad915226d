namespace Layshaft.Engineering.Life;

/// <summary>Forms the limits of one step.</summary>
internal readonly record struct KaplanMeierLimit(KaplanMeierLimits Kind, double Level, double Factor)
{
    /// <param name="survival">The estimate S.</param>
    /// <param name="logError">Standard error of log S (Greenwood), or <c>null</c> when none is left.</param>
    public Bounds About(double survival, double? logError)
    {
        if (logError is not { } error)
        {
            return new Bounds(Level, null, null);
        }

        var half = Factor * error;
        switch (Kind)
        {
            case KaplanMeierLimits.Plain:
                return new Bounds(Level, Math.Max(0, survival - half * survival), Math.Min(1, survival + half * survival));
            case KaplanMeierLimits.Log:
                return new Bounds(Level, survival * Math.Exp(-half), Math.Min(1, survival * Math.Exp(half)));
            default:
                var spread = Math.Exp(half / -Math.Log(survival));
                return new Bounds(Level, Math.Pow(survival, spread), Math.Pow(survival, 1 / spread));
        }
    }
}
