namespace Layshaft.Site.Tests.Privacy;

/// <summary>Who may read a field of the book.</summary>
internal enum Audience
{
    /// <summary>On any page, the public ones too: they name no customer and no cost.</summary>
    Anyone,

    /// <summary>On any customer's page, not on the public ones.</summary>
    Customers,

    /// <summary>On its owner's pages, and on public ones where he agrees.</summary>
    OwnOrPublic,

    /// <summary>The technical story: each owner of the gearbox, from the job on.</summary>
    Later,

    /// <summary>Whose words, prices, events or car they are, and nobody else.</summary>
    Own,

    /// <summary>Only on the shop's own pages.</summary>
    Shop,

    /// <summary>On no page at all.</summary>
    Nowhere,
}

/// <summary>
/// Each field of the book with its audience. A new field fails a test until it stands here. A name <c>FOLDER.*</c> is the
/// files' own name; <c>[private]</c> and <c>[internal]</c> are pictures that say so of themselves.
/// </summary>
internal static class FieldAudiences
{
    public static IReadOnlyDictionary<string, Audience> All { get; } = Lists.SelectMany(l => Paths(l.Fields).Select(p => (p, l.Audience))).ToDictionary(StringComparer.Ordinal);

    private static (Audience Audience, string Fields)[] Lists =>
    [
        (Audience.Anyone, """
            shop: dates numbers.decimals numbers.thousands name site_address motto address[] email telephone language units.speed units.length units.torque colour logo closing_words
            gearboxes: name description ratio_sets[].id ratio_sets[].name ratio_sets[].gears[] ratio_sets[].reverse
                drop_gears.cut.module drop_gears.cut.pressure_angle drop_gears.cut.centre_distance drop_gears.cut.face_width
                drop_gears.pairs[] drop_gears.swappable drop_gears.place final_drives[] main_gears.module
                main_gears.pressure_angle main_gears.centre_distance main_gears.face_width output_limit
            cars: tyre.size
            gearboxes: *
            shop: file
            """),
        (Audience.Customers, """
            shop: season one_file_limit currency tax.name tax.rate labour_rate show_prices estimate_valid_for use_counted_in photo_remark cautions[]
                technicians[].id technicians[].name instruments[].id instruments[].name instruments[].resolution
                instruments[].error_limit instruments[].class instruments[].repeatability instruments[].calibrated instruments[].calibrate_every
                advice[].when advice[].words
            cars: corners[].corner
            gearboxes: kind differential.ramps[] differential.outer_diameter differential.inner_diameter differential.friction
                differential.ramp_radius differential.spring_rate
            gearboxes: manual gear_pairs[].gear gear_pairs[].pairs[] change_times.drop_gears change_times.final_drive change_times.gear_pair change_times.further_pair change_times.box_out[] mesh_efficiency input_inertia dog_inertia parts[].id parts[].name parts[].kind parts[].gear parts[].shaft
                parts[].along parts[].width parts[].teeth parts[].measures[].id parts[].measures[].name parts[].measures[].new
                parts[].measures[].limit parts[].measures[].wear_makes_it parts[].measures[].span parts[].measures[].pin
                parts[].measures[].gear parts[].measures[].side parts[].measures[].instrument
                parts[].grading.watch_from parts[].grading.renew_from parts[].price parts[].service_life settings[].id
                settings[].name settings[].kind settings[].target settings[].shims settings[].more_shim settings[].condition
                settings[].required settings[].instrument usual_work[].work usual_work[].hours usual_work[].price strip[].id strip[].do strip[].caution build[].id build[].do build[].caution cautions[]
            """),
        (Audience.OwnOrPublic, """
            cars: name tyre.circumference tyre.growth tyre.wear engine.limit public *
            """),
        (Audience.Later, """
            units: gearbox serial ratio_set in_service use_at_start use_counted_in fitted[].part fitted[].serial fitted[].use
                drop_pair final_drive
            jobs: received collected use technician stripped verdict inspection built findings[].part findings[].side findings[].position
                findings[].measurements[].measure findings[].measurements[].instrument findings[].measurements[].readings[]
                findings[].conditions[] findings[].grade findings[].reason findings[].action findings[].left_in findings[].sentence
                findings[].if_left findings[].photos[] photos[].file photos[].caption photos[].moment photos[].paired_with
                photos[].private photos[].internal photos[].callouts[].mark photos[].callouts[].x photos[].callouts[].y
                photos[].callouts[].radius photos[].callouts[].from_x photos[].callouts[].from_y photos[].callouts[].label
                renewed[].part renewed[].serial renewed[].use renewed[].old_serial renewed[].reason renewed[].why settings[].setting
                settings[].found_pack[] settings[].found[] settings[].trial_pack[] settings[].trial[] settings[].pack[]
                settings[].built[] settings[].instrument settings[].by differential.found.ramps differential.found.plates
                differential.built.ramps differential.built.plates differential.why strip_list.done[] strip_list.signed_by strip_list.on
                strip_list.left_out[].step strip_list.left_out[].reason build_list.done[] build_list.signed_by build_list.on
                build_list.left_out[].step build_list.left_out[].reason gears[] drop_pair final_drive come_back.after come_back.by
                come_back.reason finished
            """),
        (Audience.Own, """
            customers: name greeting email[] telephone
            cars: customer description mass weight_on_driven_axle driven_axle wheelbase centre_of_gravity_height
                drag_coefficient frontal_area lift_coefficient rolling_resistance rolling_resistance_doubles_at grip braking tyre.slip engine.name
                engine.curve[].at engine.curve[].torque engine.curve_file engine.lowest_useful engine.launch engine.inertia engine.corrected
                driveline_efficiency axle_efficiency shift_time wheel_inertia propshaft_limit
                corners[].venue corners[].corner_speed corners[].exit_speed
            venues: name kind length altitude straights[].name straights[].exit_speed straights[].length straights[].corner
                straights[].corner_speed straights[].corner_radius straights[].grade straights[].heading
            units: owners[].from car owners[].kit.gear_pairs[].gear owners[].kit.gear_pairs[].pairs[] owners[].kit.drop_pairs[] owners[].kit.final_drives[]
            jobs: complaint driver driving estimate.sent estimate.valid_until estimate.lines[].part estimate.lines[].work
                estimate.lines[].quantity estimate.lines[].price estimate.lines[].hours estimate.lines[].need
                estimate.lines[].if_left estimate.lines[].reason estimate.lines[].id estimate.note estimate.if_refused go_ahead.answer go_ahead.on
                go_ahead.approved[] supplements[].sent supplements[].valid_until supplements[].lines[].part
                supplements[].lines[].work supplements[].lines[].quantity supplements[].lines[].price
                supplements[].lines[].hours supplements[].lines[].need supplements[].lines[].if_left
                supplements[].lines[].reason supplements[].lines[].id supplements[].reason supplements[].go_ahead.answer supplements[].go_ahead.on
                supplements[].go_ahead.approved[] renewed[].unapproved settings[].note final[].part final[].work
                final[].quantity final[].price final[].hours final[].need final[].if_left final[].reason final[].id last_event.venue last_event.on last_event.name last_event.laps
                last_event.temperature last_event.pressure last_event.humidity last_event.wind last_event.wind_from
                last_event.corners[].corner last_event.corners[].corner_speed last_event.corners[].exit_speed last_event.drop_pair last_event.final_drive
                last_event.note trace.note next_event.venue next_event.on next_event.name next_event.laps next_event.temperature
                next_event.pressure next_event.humidity next_event.wind next_event.wind_from
                next_event.corners[].corner next_event.corners[].corner_speed next_event.corners[].exit_speed next_event.drop_pair next_event.final_drive next_event.note notes
                photos[private].file photos[private].caption photos[private].moment photos[private].paired_with
                photos[private].private photos[private].internal photos[private].callouts[].mark photos[private].callouts[].x
                photos[private].callouts[].y photos[private].callouts[].radius photos[private].callouts[].from_x
                photos[private].callouts[].from_y photos[private].callouts[].label notes[text]
            """),
        (Audience.Shop, """
            customers: internal_notes
            gearboxes: parts[].cost parts[].stock shims[].id shims[].name shims[].tolerance shims[].stock[].thickness
                shims[].stock[].count
            cars: earlier_customers[]
            units: owners[].customer link_renewed internal_notes
            jobs: unit waits_for findings[].internal_note go_ahead.by go_ahead.note supplements[].go_ahead.by
                supplements[].go_ahead.note renewed[].from
                internal_notes photos[internal].file photos[internal].caption photos[internal].moment
                photos[internal].paired_with photos[internal].private photos[internal].internal photos[internal].callouts[].mark
                photos[internal].callouts[].x photos[internal].callouts[].y photos[internal].callouts[].radius
                photos[internal].callouts[].from_x photos[internal].callouts[].from_y photos[internal].callouts[].label
            customers: *
            units: *
            cars: file
            venues: *
            jobs: internal_notes[text]
            """),
        (Audience.Nowhere, """
            customers: formerly
            cars: trace_columns.header_line trace_columns.separator trace_columns.decimal_comma trace_columns.speed_from trace_columns.time
                trace_columns.speed trace_columns.engine_speed trace_columns.distance trace_columns.gear trace_columns.throttle
                trace_columns.latitude trace_columns.longitude trace_columns.lap
            jobs: photos[].place estimate.total trace.file
            """),
    ];

    // "KIND: field field", continued on deeper lines
    private static IEnumerable<string> Paths(string text)
    {
        var kind = string.Empty;
        foreach (var word in text.Split([' ', '\n', '\r'], StringSplitOptions.RemoveEmptyEntries))
        {
            if (word.EndsWith(':'))
            {
                kind = word[..^1];
                continue;
            }

            yield return $"{kind}.{word}";
        }
    }
}
