namespace Layshaft.Site.Tests.Seasons;

/// <summary>The small book with a six-speed unit whose reverse is past its limit, second to fourth are worn and the others good.</summary>
internal static class DrivingBook
{
    // The ids say nothing of gears: advice works from 'gear' and 'side' alone.
    private const string Gearbox = """
        name: Tester Six
        ratio_sets:
          - { id: std, name: Standard, gears: [35/12, 33/16, 31/19, 29/21, 27/23, 26/25], reverse: 41/14 }
        final_drives: [34/9]
        parts:
          - id: sleeve-a
            name: Reverse and first ring
            kind: dog ring
            gear: 0
            measures:
              - { id: edge-a, name: Corner radius on reverse, new: 0.30 mm, limit: 1.20 mm, gear: 0 }
              - { id: edge-b, name: Corner radius on first, new: 0.30 mm, limit: 1.20 mm, gear: 1 }
          - id: sleeve-b
            name: Second and third ring
            kind: dog ring
            gear: 2
            measures:
              - { id: edge-a, name: Corner radius on second, new: 0.30 mm, limit: 1.20 mm, gear: 2 }
              - { id: edge-b, name: Corner radius on third, new: 0.30 mm, limit: 1.20 mm, gear: 3 }
              - { id: hook, name: Back-cut on third, new: 5.0°, limit: 1.5°, gear: 3, side: coast }
          - id: sleeve-c
            name: Fourth ring
            kind: dog ring
            gear: 4
            measures:
              - { id: edge, name: Corner radius on fourth, new: 0.30 mm, limit: 1.20 mm, gear: 4 }
          - id: sleeve-d
            name: Fifth and sixth ring
            kind: dog ring
            gear: 5
            measures:
              - { id: edge-a, name: Corner radius on fifth, new: 0.30 mm, limit: 1.20 mm, gear: 5 }
              - { id: edge-b, name: Corner radius on sixth, new: 0.30 mm, limit: 1.20 mm, gear: 6 }
          - { id: wheel-2, name: Second gear, kind: gear, gear: 2 }
          - { id: wheel-3, name: Third gear, kind: gear, gear: 3 }
          - { id: wheel-4, name: Fourth gear, kind: gear, gear: 4 }
          - { id: fork, name: Second and third fork, kind: selector, gear: 2 }
        """;

    private const string Job = """
        unit: c
        received: 2025-11-03
        use: 40 h
        complaint: Reverse grinds, and the middle gears baulk.
        driver: some seasons
        stripped: 2025-11-04
        verdict: The reverse ring is past its limit, and the middle rings are worn.
        findings:
          - part: sleeve-a
            measurements:
              - { measure: edge-a, instrument: scope, readings: [1.25 mm, 1.26 mm] }
              - { measure: edge-b, instrument: scope, readings: [0.55 mm, 0.55 mm] }
          - part: sleeve-b
            SIDE
            measurements:
              - { measure: edge-a, instrument: scope, readings: [0.95 mm, 0.94 mm] }
              - { measure: edge-b, instrument: scope, readings: [0.94 mm, 0.94 mm] }
          - part: sleeve-c
            SIDE
            measurements:
              - { measure: edge, instrument: scope, readings: [0.95 mm, 0.96 mm] }
          - part: sleeve-d
            measurements:
              - { measure: edge-a, instrument: scope, readings: [0.39 mm, 0.39 mm] }
              - { measure: edge-b, instrument: scope, readings: [0.39 mm, 0.39 mm] }
          - { part: wheel-2, grade: reuse }
          - { part: wheel-3, grade: reuse }
          - { part: wheel-4, grade: reuse }
          MORE
        renewed:
          - { part: sleeve-a }
        finished: 2025-11-20
        """;

    public const string Report = "customers/key-c-0/0009/index.html";

    /// <summary>The files of the case.</summary>
    /// <param name="side">The side recorded for the middle rings; null for none.</param>
    /// <param name="more">One more finding.</param>
    public static (string Path, string Text)[] Files(string? side = null, string? more = null) =>
    [
        ("shop.yaml", SmallBook.Shop[..SmallBook.Shop.IndexOf("advice:", StringComparison.Ordinal)]),
        ("gearboxes/six.yaml", Gearbox),
        ("units/c.yaml", "gearbox: six\nserial: C-3\nratio_set: std\nowners:\n  - { customer: second, from: 2023-01-01 }\nin_service: 2023-03-01\nuse_at_start: 0 h\nfinal_drive: 34/9\n"),
        ("jobs/2025/0009/job.yaml", Job
            .Replace("    SIDE\n", side is null ? string.Empty : $"    side: {side}\n", StringComparison.Ordinal)
            .Replace("  MORE\n", more is null ? string.Empty : $"  {more}\n", StringComparison.Ordinal)),
    ];
}
