package shaftwright.live;

import java.util.OptionalDouble;
import java.util.function.Function;
import shaftwright.contract.Grid;
import shaftwright.formula.Cases;
import shaftwright.formula.Given;
import shaftwright.formula.Pieces;
import shaftwright.joint.Boot;
import shaftwright.joint.BootSeats;
import shaftwright.joint.BootStretch;
import shaftwright.reading.SideOutcome;
import shaftwright.reading.Sizing;
import shaftwright.shaft.ShaftEnd;
import shaftwright.shaft.SideResult;
import shaftwright.study.BootStrain;

/** What becomes of boots over the travel: their fibres at each position, and what they take. */
final class BootLines {
    private static final int SINCE = 6;

    private BootLines() {}

    /** Seats and limits of a scenario's boot, beside its joint's sizes. */
    static void seats(LineSet<SideOutcome> sides, ShaftEnd end) {
        LineSet<Boot> boots =
                sides.since(SINCE).at(end).of((side, index) -> side.joint(end).boot());
        boots.whole("boot_on_<end>", "Boot's seats known, <inner>")
                .yes(
                        """
                        IF({boot_row_<end>}=0,0,IF(COUNT(INDEX(boot_cup_seat_read,{boot_row_<end>}),
                        INDEX(boot_shaft_seat_read,{boot_row_<end>}),
                        INDEX(boot_cup_diameter_read,{boot_row_<end>}),
                        INDEX(boot_shaft_diameter_read,{boot_row_<end>}))=4,1,0))
                        """,
                        boot -> boot.seats().isPresent());
        LineSet<BootSeats> seats = boots.ofAny((boot, index) -> boot.seats(), Lacking.EMPTY);
        seats.mm("boot_cup_<end>", "Boot's seat on the cup, <inner>")
                .is(onSeats(typed("cup_seat")), BootSeats::cup);
        seats.mm("boot_shaft_<end>", "Boot's seat on the shaft, <inner>")
                .is(onSeats(typed("shaft_seat")), BootSeats::shaft);
        seats.mm("boot_cup_radius_<end>", "Radius of the seat on the cup, <inner>")
                .is(onSeats(typed("cup_diameter") + "/2"), BootSeats::cupRadius);
        seats.mm("boot_shaft_radius_<end>", "Radius of the seat on the shaft, <inner>")
                .is(onSeats(typed("shaft_diameter") + "/2"), BootSeats::shaftRadius);
        LineSet<Boot> shown =
                boots.in(Section.MATING, Grid.SCENARIO_SIDE)
                        .only(Known.SETUP.of(side -> side.joint(end).boot()), Lacking.EMPTY);
        shown.shown("boot_takes_least_<end>", "<Inner> boot takes, shortest")
                .ifKnown(onSeats("shortest", typed("shortest") + "/tape_mm"), Boot::shortestFibre);
        shown.shown("boot_takes_most_<end>", "<Inner> boot takes, longest fibre")
                .ifKnown(
                        onSeats(
                                "longest",
                                """
                                SQRT(INDEX(boot_longest_read,{boot_row_<end>})^2
                                +({boot_cup_radius_<end>}-{boot_shaft_radius_<end>})^2)/tape_mm
                                """),
                        Boot::longestFibre);
        shown.deg("boot_takes_angle_<end>", "<Inner> boot takes, angle")
                .ifKnown(
                        Given.row(
                                "{boot_row_<end>}",
                                Given.number(typed("angle"), "DEGREES(" + typed("angle") + ")")),
                        boot -> boot.limits().angle());
    }

    /** A figure of the boot's row. */
    private static String typed(String column) {
        return "INDEX(boot_" + column + "_read,{boot_row_<end>})";
    }

    private static String onSeats(String formula) {
        return Given.when("{boot_on_<end>}=1", formula);
    }

    /** The same where a limit is known too. */
    private static String onSeats(String limit, String formula) {
        return Given.when("IF({boot_on_<end>}=1,ISNUMBER(" + typed(limit) + "),FALSE)", formula);
    }

    /** Each end's fibres at a position, over the float. */
    static void positions(LineSet<PositionRow> rows) {
        for (ShaftEnd end : ShaftEnd.values()) {
            fibres(
                    rows.since(SINCE)
                            .at(end)
                            .ofAny((row, index) -> row.after().boot(end), Lacking.EMPTY));
        }
    }

    private static void fibres(LineSet<BootStretch> rows) {
        rows.revised(7)
                .with(geometry(nearest()))
                .mm("boot_least_<end>", "<Inner> boot, shortest fibre")
                .is(
                        onSeats(
                                """
                                SQRT(MAX(0,<line>+IF(ABS(<slope>)<<bend>,0-<slope>^2/<bend>,
                                <bend>-2*ABS(<slope>))))
                                """),
                        BootStretch::shortest);
        rows.with(most("float_out", "out"))
                .with(most("float_in", "in"))
                .mm("boot_most_<end>", "<Inner> boot, longest fibre")
                .is(onSeats("SQRT(MAX(0,<most_out>,<most_in>))"), BootStretch::longest);
    }

    /** What fibres come to over the travel, and what is wrong; a table of the card's scenario. */
    static void declare(LiveLines lines) {
        LineSet<Sizing> all = LineSet.in(lines, Section.MATING, Grid.SCENARIO_SIDE).since(SINCE);
        for (ShaftEnd end : ShaftEnd.values()) {
            totals(all.at(end), end);
        }
        for (ShaftEnd end : ShaftEnd.values()) {
            strain(
                    all.in(Section.SIDE_WORK, Grid.SCENARIO_SIDE)
                            .at(end)
                            .only(Known.RESULT, Lacking.NOT_AVAILABLE),
                    end);
        }
        table(all.in(Section.MATING_TABLE, Grid.CHART_POINT));
    }

    /** The fibres of the card's scenario, as charts draw them. */
    private static void table(LineSet<Sizing> all) {
        all.only(Card.SHAFT, Lacking.NOT_AVAILABLE)
                .shown("boot_table_travel", "Travel, bump +")
                .is(onCard("travel"), (result, index) -> result.fitted().get(index.row()).travel());
        for (ShaftEnd end : ShaftEnd.values()) {
            LineSet<Sizing> ends = all.at(end);
            LineSet<BootStretch> fibres =
                    ends.only(
                                    seated(
                                            Card.SHAFT,
                                            end,
                                            "IF(ISNUMBER({shop_e}),"
                                                    + Card.cell("boot_on_<end>")
                                                    + "=1,FALSE)"),
                                    Lacking.NOT_AVAILABLE)
                            .of(
                                    (result, index) ->
                                            result.fitted()
                                                    .get(index.row())
                                                    .boot(end)
                                                    .orElseThrow());
            fibres.shown("boot_table_least_<end>", "<Inner> boot, shortest fibre")
                    .is(onCard("boot_least_<end>"), BootStretch::shortest);
            fibres.shown("boot_table_most_<end>", "<Inner> boot, longest fibre")
                    .is(onCard("boot_most_<end>"), BootStretch::longest);
            Known<Boot> boots = Card.SHAFT.of(result -> result.setup().joint(end).boot());
            limit(ends, boots, "least", "shortest", Boot::shortestFibre);
            limit(ends, boots, "most", "longest", Boot::longestFibre);
        }
    }

    /** A limit as charts draw it, which leave out what is not available. */
    private static void limit(
            LineSet<Sizing> all,
            Known<Boot> boots,
            String limit,
            String word,
            Function<Boot, OptionalDouble> core) {
        String takes = Card.cell("boot_takes_" + limit + "_<end>");
        all.only(
                        boots.ofAny(
                                "IF(ISNUMBER({shop_e}),ISNUMBER(" + takes + "),FALSE)",
                                boot -> core.apply(boot).stream().boxed().findAny()),
                        Lacking.NOT_AVAILABLE)
                .shown("boot_table_takes_" + limit + "_<end>", "<Inner> boot takes, " + word)
                .is(takes, most -> most);
    }

    /** The card's scenario's row of a line. */
    private static String onCard(String line) {
        return ("INDEX(" + line + "~,(card_index-1)*")
                + (Grid.POSITION.rows() + "+<row_from_1>)/tape_mm");
    }

    /** A shaft with a boot that is clamped to known seats. */
    private static Known<SideResult> seated(
            Known<SideResult> shaft, ShaftEnd end, String condition) {
        return shaft.ofAny(
                condition, result -> result.setup().joint(end).boot().seats().map(seats -> result));
    }

    /** As {@link BootSeats} has it: V² + B², V·A, A² − B². */
    private static Pieces geometry(String place) {
        return Pieces.of("angle", "{float_angle_<end>}")
                .and("along", "(" + place + "+{boot_cup_<end>})")
                .and(
                        "line",
                        """
                        (MAX(0,{boot_shaft_<end>}^2+<along>^2
                        -2*{boot_shaft_<end>}*<along>*COS(<angle>))
                        +({boot_cup_radius_<end>}-{boot_shaft_radius_<end>})^2)
                        """)
                .and(
                        "slope",
                        """
                        (SIN(<angle>)*(<along>*{boot_shaft_radius_<end>}
                        -{boot_shaft_<end>}*{boot_cup_radius_<end>}))
                        """)
                .and(
                        "bend",
                        """
                        (2*{boot_cup_radius_<end>}*{boot_shaft_radius_<end>}*(1-COS(<angle>)))
                        """);
    }

    /** As {@link BootSeats#nearest} has it. */
    private static String nearest() {
        return """
        MEDIAN({float_out_<end>},{float_in_<end>},{boot_shaft_<end>}*COS(<angle>)
        -IF({boot_cup_radius_<end>}<{boot_shaft_radius_<end>}*COS(<angle>),-1,1)
        *{boot_shaft_radius_<end>}*SIN(<angle>)-{boot_cup_<end>})
        """;
    }

    private static Pieces most(String place, String way) {
        return geometry("{" + place + "_<end>}").and("most_" + way, "<line>+<bend>+2*ABS(<slope>)");
    }

    private static void totals(LineSet<Sizing> all, ShaftEnd end) {
        LineSet<SideResult> fibres =
                all.only(
                        seated(Known.RESULT, end, "IF({ready}=1,{boot_on_<end>}=1,FALSE)"),
                        Lacking.EMPTY);
        fibres.shown("boot_least_travel_<end>", "<Inner> boot over the travel, shortest fibre")
                .is("MIN({boot_least_<end>:all})/tape_mm", result -> result.shortestFibre(end));
        fibres.shown("boot_most_travel_<end>", "<Inner> boot over the travel, longest fibre")
                .is(
                        "MAX({boot_most_<end>:all})/tape_mm",
                        result -> result.greatestOfBoot(end, BootStretch::longest).value());
        all.only(
                        Known.RESULT.ofAny(
                                "IF({ready}=1,ISNUMBER({float_angle_<end>#<ride>}),FALSE)",
                                result -> result.atRide().endFloat().map(floats -> result)),
                        Lacking.EMPTY)
                .deg("boot_angle_most_<end>", "<Inner> joint's steepest angle, floated")
                .is(
                        "DEGREES(MAX({float_angle_<end>:all}))",
                        result ->
                                result.fitted().stream()
                                        .mapToDouble(row -> row.endFloat().orElseThrow().angle(end))
                                        .max()
                                        .orElseThrow());
    }

    private static void strain(LineSet<SideResult> all, ShaftEnd end) {
        Pieces over =
                Pieces.of("near", "0.000001")
                        .and(
                                "short",
                                """
                                IF(COUNT({boot_most_travel_<end>},{boot_takes_most_<end>})=2,
                                ({boot_most_travel_<end>}-{boot_takes_most_<end>})*tape_mm,0)
                                """)
                        .and(
                                "long",
                                """
                                IF(COUNT({boot_least_travel_<end>},{boot_takes_least_<end>})=2,
                                ({boot_takes_least_<end>}-{boot_least_travel_<end>})*tape_mm,0)
                                """)
                        .and(
                                "bent",
                                """
                                IF(COUNT({boot_angle_most_<end>},{boot_takes_angle_<end>})=2,
                                RADIANS({boot_angle_most_<end>}-{boot_takes_angle_<end>}),0)
                                """);
        LineSet<BootStrain> strains =
                all.with(over).ofAny((result, index) -> BootStrain.of(result, end), Lacking.ZERO);
        strains.whole("boot_strain_<end>", "What the <inner> boot does not take (0 none)")
                .is(
                        new Cases()
                                .when("<short>><near>", 1)
                                .when("<long>><near>", 2)
                                .when("<bent>><near>", 3)
                                .otherwise("0"),
                        strain -> strain.kind().number());
        strains.mm("boot_strain_by_<end>", "… by how much, mm or rad")
                .is(
                        "CHOOSE({boot_strain_<end>}+1,0,<short>,<long>,<bent>)",
                        strain -> strain.worst().value());
        strains.mm("boot_strain_at_<end>", "… at travel")
                .is(
                        """
                        IF({boot_strain_<end>}=0,0,INDEX({travel:all},CHOOSE({boot_strain_<end>},
                        MATCH(MAX({boot_most_<end>:all}),{boot_most_<end>:all},0),
                        MATCH(MIN({boot_least_<end>:all}),{boot_least_<end>:all},0),
                        MATCH(MAX({float_angle_<end>:all}),{float_angle_<end>:all},0))))
                        """,
                        strain -> strain.worst().travel());
    }
}
