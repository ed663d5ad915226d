namespace Layshaft.Site.Tests.Privacy;

/// <summary>
/// A book with something in every field: gearbox <c>a</c> was sold once, gearbox <c>b</c> is another customer's. Where a
/// value is <c>W</c> a unique word is planted, <c>W:name</c> is the same word each time, <c>M</c> a unique amount of money.
/// </summary>
internal static class PlantedBook
{
    /// <summary>The files with their marks. Names of files that hold <c>W:name</c> get that word.</summary>
    public static IReadOnlyDictionary<string, string> Templates { get; } = new Dictionary<string, string>(StringComparer.Ordinal)
    {
        ["shop.yaml"] = """
            name: W
            motto: W
            address: [W, W]
            email: bench@shop.example
            telephone: "+44 1632 960017"
            units: { speed: mph, length: in, torque: lbf·ft }
            numbers: { decimals: point, thousands: mark }
            dates: words
            season: April to October
            colour: "#1f4e79"
            logo: W:logo.png
            site_address: https://reports.shop.example/boxes
            one_file_limit: 8 MB
            language: en
            currency: EUR
            tax: { name: W, rate: 20 % }
            labour_rate: M
            show_prices: yes
            estimate_valid_for: 3 weeks
            use_counted_in: hours
            closing_words: W
            photo_remark: W
            cautions: [W]
            technicians:
              - { id: "W:amy", name: W }
            instruments:
              - { id: "W:scope", name: W, resolution: 0.01 mm, error_limit: 0.01 mm, repeatability: 0.01 mm, calibrated: 2022-12-01, calibrate_every: 10 years }
              - { id: "W:wrench", name: W, resolution: 1 N·m, class: 4 %, calibrated: 2022-12-01, calibrate_every: 10 years }
            advice:
              - { when: at rest, words: W }
              - { when: several gears, words: W }
              - { when: one gear, words: W }
            """,
        ["W:logo.png"] = "no picture of ours is read for it",
        ["customers/W:first.yaml"] = Customer,
        ["customers/W:second.yaml"] = Customer,
        ["customers/W:third.yaml"] = Customer,
        ["gearboxes/W:four.yaml"] = """
            name: W
            description: W
            manual: W
            kind: gearbox
            differential: { ramps: [45°/60°, 30°/90°], outer_diameter: 110 mm, inner_diameter: 78 mm, friction: 0.10, ramp_radius: 34 mm, spring_rate: 2900 N/mm }
            ratio_sets:
              - { id: "W:std", name: W, gears: [38/16, 34/19, 32/22, 30/25], reverse: 41/14 }
            final_drives: [34/11, 37/11]
            drop_gears:
              cut: { module: 2.5 mm, pressure_angle: 20°, centre_distance: 66.25 mm, face_width: 18 mm }
              pairs: [29/23, 28/25]
              swappable: yes
              place: output
            gear_pairs: [ { gear: 4, pairs: [31/24] } ]
            change_times: { drop_gears: 0.7 h, final_drive: 3.1 h, gear_pair: 2.3 h, further_pair: 0.9 h, box_out: [gear pair, final drive] }
            main_gears: { module: 3 mm, pressure_angle: 20°, centre_distance: 82 mm, face_width: 16 mm }
            output_limit: 9000 rpm
            mesh_efficiency: 98.9 %
            input_inertia: 0.0062 kg·m²
            dog_inertia: 0.0011 kg·m²
            parts:
              - id: "W:ring12"
                name: W
                kind: dog ring
                gear: 1
                shaft: main
                along: 57 mm
                width: 18 mm
                measures:
                  - { id: "W:r1", name: W, new: 0.30 mm, limit: 1.20 mm, wear_makes_it: larger, gear: 1, side: drive, instrument: "W:scope" }
                  - { id: "W:r2", name: W, new: 0.30 mm, limit: 1.20 mm, gear: 2, side: coast }
                grading: { watch_from: 60 %, renew_from: 100 % }
                price: M
                cost: M
                stock: 0
                service_life: 60 h
              - { id: "W:lay1", name: W, kind: gear, gear: 1, shaft: lay, along: 37 mm, width: 18 mm, teeth: 16, measures: [ { id: "W:span", name: W, new: 23.480 mm, limit: 23.380 mm, span: 3 } ], cost: M }
              - { id: "W:main1", name: W, kind: gear, gear: 1, shaft: main, along: 37 mm, width: 18 mm, measures: [ { id: "W:pins", name: W, new: 120.00 mm, limit: 119.80 mm, pin: 5 mm } ] }
              - { id: "W:seal", name: W, kind: seal }
            shims:
              - { id: "W:lay", name: W, tolerance: 0.005 mm, stock: [ { thickness: 0.10 mm, count: 0 }, { thickness: 0.20 mm, count: 4 } ] }
            settings:
              - { id: "W:float", name: W, kind: end float, target: 0.05 mm to 0.10 mm, shims: "W:lay", more_shim: smaller, condition: W, required: yes, instrument: "W:scope" }
              - { id: "W:depth", name: W, kind: position, target: 0.05 mm to 0.10 mm, required: no }
            strip:
              - { id: "W:off", do: W, caution: W }
              - { id: "W:look", do: W, caution: W }
            build:
              - { id: "W:on", do: W, caution: W }
              - { id: "W:wait", do: W, caution: W }
            cautions: [W]
            usual_work:
              - { work: W, hours: M, price: M }
            """,
        ["cars/W:public.yaml"] = Car("W:third", "yes").Replace("curve: [ { at: 4000 rpm, torque: 112 N·m }, { at: 7000 rpm, torque: 157 N·m }, { at: 9000 rpm, torque: 158 N·m } ]", "curve_file: W:curve.csv", StringComparison.Ordinal),
        ["cars/W:curve.csv"] = "rpm,torque\n4000,112\n7000,157\n9000,158\n",
        ["cars/W:quiet.yaml"] = Car("W:second", "no").Replace("492 kg", "487 kg", StringComparison.Ordinal),
        ["venues/W:hill.yaml"] = Venue,
        ["venues/W:ring.yaml"] = Venue,
        ["units/W:a.yaml"] = """
            gearbox: "W:four"
            serial: W
            ratio_set: "W:std"
            owners:
              - { customer: "W:first", from: 2023-01-01 }
              - { customer: "W:second", from: 2025-01-01, kit: { gear_pairs: [ { gear: 3, pairs: [33/21] } ], drop_pairs: [30/23], final_drives: [36/11] } }
            car: "W:quiet"
            in_service: 2023-01-10
            use_at_start: 0 h
            use_counted_in: hours
            fitted:
              - { part: "W:lay1", serial: W, use: 3 h }
            drop_pair: 29/23
            final_drive: 34/11
            link_renewed: 1
            internal_notes: W
            """,
        ["units/W:b.yaml"] = """
            gearbox: "W:four"
            serial: W
            ratio_set: "W:std"
            owners:
              - { customer: "W:third", from: 2023-01-01 }
            car: "W:public"
            in_service: 2023-03-01
            use_at_start: 10 h
            fitted:
              - { part: "W:ring12", serial: "W:moved" }
            final_drive: 34/11
            internal_notes: W
            """,
        ["jobs/2023/j1/job.yaml"] = Finished("W:a", 2023, "20 h", "W:hill", 0.5),
        ["jobs/2024/j2/job.yaml"] = Finished("W:a", 2024, "40 h", "W:hill", 1.3),
        ["jobs/2025/j3/job.yaml"] = Finished("W:a", 2025, "60 h", "W:ring", 0.6).Replace("from: null", "from: \"W:b\"", StringComparison.Ordinal),
        ["jobs/2025/j4/job.yaml"] = Finished("W:b", 2025, "30 h", "W:ring", 0.7).Replace("2025-11-", "2025-10-", StringComparison.Ordinal).Replace("received: 2025-10-01", "received: 2025-10-02", StringComparison.Ordinal),
        ["jobs/2023/j1/W:trace.csv"] = Trace,
        ["jobs/2024/j2/W:trace.csv"] = Trace,
        ["jobs/2025/j3/W:trace.csv"] = Trace,
        ["jobs/2025/j4/W:trace.csv"] = Trace,
        ["jobs/2026/j5/job.yaml"] = """
            unit: "W:a"
            received: 2026-01-10
            use: 70 h
            complaint: W
            technician: "W:amy"
            stripped: 2026-01-11
            waits_for: W
            estimate: { sent: 2026-01-12, note: W, total: 30.00, lines: [ { work: W, price: 10.00, need: should, if_left: W }, { part: "W:ring12", quantity: 1, price: 20.00, need: must, if_left: W } ] }
            findings: [ { part: "W:ring12", sentence: W, internal_note: W, measurements: [ { measure: "W:r1", readings: [0.9 mm] } ] } ]
            notes: W:n.md
            internal_notes: W:i.md
            """,
    };

    private const string Customer = "name: W\nformerly: W\ngreeting: W\nemail: [W, W]\ntelephone: W\ninternal_notes: W\n";

    private const string Venue = """
        name: W
        kind: hill climb
        length: 1000 m
        altitude: 40 m
        straights:
          - { name: W, length: 400 m, corner: "W:bend", corner_speed: 60 km/h, corner_radius: 21 m, grade: 2 %, heading: 45° }
          - { name: W, exit_speed: 66 km/h, length: 300 m, corner: finish, heading: 90° }
        """;

    private const string Trace = "one\ntwo\nW:tt;W:ts;W:te;W:td;W:tg;W:th;W:ta;W:to;W:tl\n0,0;90;5000;0;3;50;52,1;1,2;1\n0,1;90;5000;3;3;50;52,1;1,2;1\n";

    private static string Car(string customer, string isPublic) => $$"""
        name: W
        customer: "{{customer}}"
        earlier_customers: ["W:third"]
        description: W
        mass: 492 kg
        weight_on_driven_axle: 64 %
        driven_axle: rear
        wheelbase: 2.52 m
        centre_of_gravity_height: 0.30 m
        drag_coefficient: 0.78
        frontal_area: 1.06 m²
        lift_coefficient: -1.9
        rolling_resistance: 0.017
        rolling_resistance_doubles_at: 170 km/h
        grip: 1.5
        braking: 14 m/s²
        tyre: { size: 10.0/20.0-13, circumference: 1.566 m, growth: 1 %, slip: 4 %, wear: 2 mm }
        engine: { name: W, limit: 9000 rpm, lowest_useful: 5000 rpm, launch: 5600 rpm, inertia: 0.06 kg·m², corrected: yes, curve: [ { at: 4000 rpm, torque: 112 N·m }, { at: 7000 rpm, torque: 157 N·m }, { at: 9000 rpm, torque: 158 N·m } ] }
        driveline_efficiency: 91 %
        axle_efficiency: 95 %
        shift_time: 80 ms
        wheel_inertia: 2.1 kg·m²
        propshaft_limit: 9000 rpm
        corners: [ { venue: "W:hill", corner: "W:bend", corner_speed: 58 km/h, exit_speed: 64 km/h } ]
        trace_columns:
          header_line: 3
          separator: semicolon
          decimal_comma: yes
          speed_from: free wheels
          time: W:tt
          speed: W:ts
          engine_speed: W:te
          distance: W:td
          gear: W:tg
          throttle: W:th
          latitude: W:ta
          longitude: W:to
          lap: W:tl
        public: {{isPublic}}
        """;

    private static string Finished(string unit, int year, string use, string venue, double worn) => FormattableString.Invariant($$"""
        unit: "{{unit}}"
        received: {{year}}-11-01
        use: {{use}}
        complaint: W
        technician: "W:amy"
        driver: first season
        stripped: {{year}}-11-02
        waits_for: W
        verdict: W
        driving: W
        inspection: { "W:main1": { "W:pins": 119.95 } }
        built: { "W:depth": 0.07 }
        findings:
          - part: "W:ring12"
            side: drive
            position: W
            measurements:
              - { measure: "W:r1", instrument: "W:scope", readings: [{{worn:0.00}} mm, {{worn + 0.01:0.00}} mm] }
              - { measure: "W:r2", instrument: "W:scope", readings: [{{worn / 2:0.00}} mm] }
            conditions: [rounded dogs]
            grade: watch
            reason: W
            action: W
            sentence: W
            if_left: W
            photos: ["W:open.jpg", "W:private.jpg"]
            internal_note: W
          - { part: "W:lay1", grade: renew, left_in: W }
        photos:
          - { file: "W:open.jpg", caption: W, moment: before, callouts: [ { mark: arrow, x: 40 %, y: 40 %, radius: 5 %, from_x: 10 %, from_y: 10 %, label: W } ] }
          - { file: "W:private.jpg", caption: W, moment: after, paired_with: "W:open.jpg", private: yes, callouts: [ { mark: circle, x: 40 %, y: 40 %, label: W } ] }
          - { file: "W:internal.jpg", caption: W, internal: yes, callouts: [ { mark: circle, x: 40 %, y: 40 %, label: W } ] }
        estimate:
          sent: {{year}}-11-03
          valid_until: {{year}}-11-20
          note: W
          if_refused: M
          lines:
            - { part: "W:ring12", quantity: 1, price: M, need: must, if_left: W, reason: W, id: "W:line" }
            - { work: W, hours: M, need: should, if_left: W }
        go_ahead: { answer: by line, approved: ["W:line"], on: {{year}}-11-04, by: W, note: W }
        supplements:
          - sent: {{year}}-11-05
            valid_until: {{year}}-11-21
            reason: W
            lines:
              - { part: "W:main1", quantity: 1, price: M, need: must, if_left: W, reason: W, id: "W:line" }
              - { work: W, hours: M, need: should, if_left: W }
            go_ahead: { answer: by line, approved: ["W:line"], on: {{year}}-11-06, by: W, note: W }
        renewed:
          - { part: "W:ring12", serial: W, use: 4 h, from: null, old_serial: W, reason: worn, why: W }
          - { part: "W:seal", unapproved: W }
        settings:
          - { setting: "W:float", found_pack: [1.00 mm], found: [0.15 mm], trial_pack: [1.00 mm], trial: [0.15 mm], pack: [1.00 mm, 0.10 mm], built: [0.07 mm], instrument: "W:scope", by: "W:amy", note: W }
        differential: { found: { ramps: 45°/60°, plates: O-I-O-I-O }, built: { ramps: 30°/90°, plates: O-O-I-I-O }, why: W }
        strip_list: { done: ["W:off"], signed_by: "W:amy", on: {{year}}-11-02, left_out: [ { step: "W:look", reason: W } ] }
        build_list: { done: ["W:on"], signed_by: "W:amy", on: {{year}}-11-05, left_out: [ { step: "W:wait", reason: W } ] }
        final:
          - { part: "W:ring12", quantity: 1, price: M, need: must, if_left: W, reason: W, id: "W:line" }
          - { work: W, quantity: 1, hours: M, need: should, reason: W }
        gears: [38/16, 34/19, 32/22, 30/25]
        drop_pair: 28/25
        final_drive: 37/11
        last_event: { venue: "{{venue}}", on: {{year}}-10-01, name: W, laps: 4, temperature: 12 °C, pressure: 1010 hPa, humidity: 50 %, wind: 9 km/h, wind_from: 200°, corners: [ { corner: "W:bend", corner_speed: 57 km/h, exit_speed: 63 km/h } ], drop_pair: 29/23, final_drive: 34/11, note: W }
        trace: { file: "W:trace.csv", note: W }
        next_event: { venue: "{{venue}}", on: {{year}}-12-01, name: W, laps: 5, temperature: 12 °C, pressure: 1010 hPa, humidity: 50 %, wind: 8 km/h, wind_from: 210°, corners: [ { corner: "W:bend", corner_speed: 59 km/h, exit_speed: 65 km/h } ], drop_pair: 28/25, final_drive: 37/11, note: W }
        come_back: { after: 20 h, by: {{year + 1}}-10-01, reason: W }
        finished: {{year}}-11-10
        collected: {{year}}-11-12
        notes: W:n.md
        internal_notes: W:i.md
        """);
}
