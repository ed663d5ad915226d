namespace Layshaft.Engineering.Gearing;

/// <summary>Collects the faults of one set of figures, so that all are told at once.</summary>
internal sealed class FaultList
{
    private readonly List<GearingFault> _faults = [];

    internal bool IsEmpty => _faults.Count == 0;

    internal void Add(GearingFault fault) => _faults.Add(fault);

    internal void AddRange(IEnumerable<GearingFault> faults) => _faults.AddRange(faults);

    /// <summary>Notes a figure that is not finite or not within low…high, both included.</summary>
    internal void Range(string subject, double figure, double low, double high, string unit = "")
    {
        if (!(figure >= low && figure <= high))
        {
            _faults.Add(new GearingFault(GearingFaultKind.OutOfRange, subject, figure, low, high, unit));
        }
    }

    internal void CopyTo(FaultList other) => other.AddRange(_faults);

    /// <summary>Builds the value only when no fault was noted.</summary>
    internal Outcome<T> Finish<T>(Func<T> build)
        where T : class => IsEmpty ? new Outcome<T>(build(), []) : new Outcome<T>(null, _faults.ToArray());
}
