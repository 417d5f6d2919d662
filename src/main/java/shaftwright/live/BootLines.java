package shaftwright.live;

import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.Function;
import java.util.function.ToDoubleFunction;
import shaftwright.contract.Grid;
import shaftwright.contract.Index;
import shaftwright.formula.Cases;
import shaftwright.formula.Given;
import shaftwright.formula.Pieces;
import shaftwright.joint.Boot;
import shaftwright.joint.BootSeats;
import shaftwright.joint.BootStretch;
import shaftwright.reading.SideOutcome;
import shaftwright.reading.Sizing;
import shaftwright.shaft.FittedPosition;
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
                .is(
                        """
                        IF({boot_row_<end>}=0,0,IF(COUNT(INDEX(boot_cup_seat_read,{boot_row_<end>}),
                        INDEX(boot_shaft_seat_read,{boot_row_<end>}),
                        INDEX(boot_cup_diameter_read,{boot_row_<end>}),
                        INDEX(boot_shaft_diameter_read,{boot_row_<end>}))=4,1,0))
                        """,
                        boot -> boot.seats().isPresent() ? 1 : 0);
        seat(boots, "boot_cup_<end>", "Boot's seat on the cup", "boot_cup_seat", BootSeats::cup);
        seat(
                boots,
                "boot_shaft_<end>",
                "Boot's seat on the shaft",
                "boot_shaft_seat",
                BootSeats::shaft);
        seat(
                boots,
                "boot_cup_radius_<end>",
                "Radius of the seat on the cup",
                "boot_cup_diameter",
                BootSeats::cupRadius);
        seat(
                boots,
                "boot_shaft_radius_<end>",
                "Radius of the seat on the shaft",
                "boot_shaft_diameter",
                BootSeats::shaftRadius);
        LineSet<Boot> shown =
                boots.in(Section.MATING, Grid.SCENARIO_SIDE)
                        .only(
                                new Known<>(
                                        Known.SETUP.condition(),
                                        (sizing, index) ->
                                                Known.SETUP
                                                        .source()
                                                        .of(sizing, index)
                                                        .map(side -> side.joint(end).boot())),
                                Lacking.EMPTY);
        shown.shown("boot_takes_least_<end>", "<Inner> boot takes, shortest")
                .ifKnown(
                        onSeats("INDEX(boot_shortest_read,{boot_row_<end>})/tape_mm", "shortest"),
                        Boot::shortestFibre);
        shown.shown("boot_takes_most_<end>", "<Inner> boot takes, longest fibre")
                .ifKnown(
                        onSeats(
                                """
                                SQRT(INDEX(boot_longest_read,{boot_row_<end>})^2
                                +({boot_cup_radius_<end>}-{boot_shaft_radius_<end>})^2)/tape_mm
                                """,
                                "longest"),
                        Boot::longestFibre);
        shown.deg("boot_takes_angle_<end>", "<Inner> boot takes, angle")
                .ifKnown(
                        Given.row(
                                "{boot_row_<end>}",
                                Given.number(
                                        "INDEX(boot_angle_read,{boot_row_<end>})",
                                        "DEGREES(INDEX(boot_angle_read,{boot_row_<end>}))")),
                        boot -> boot.limits().angle());
    }

    private static void seat(
            LineSet<Boot> boots,
            String name,
            String label,
            String column,
            ToDoubleFunction<BootSeats> core) {
        String half = column.endsWith("diameter") ? "/2" : "";
        boots.mm(name, label + ", <inner>")
                .is(
                        Given.when(
                                "{boot_on_<end>}=1",
                                "INDEX(" + column + "_read,{boot_row_<end>})" + half),
                        boot ->
                                boot.seats().stream()
                                        .mapToDouble(core)
                                        .findAny()
                                        .orElse(Double.NaN));
    }

    private static String onSeats(String formula, String limit) {
        return Given.when(
                "IF({boot_on_<end>}=1,ISNUMBER(INDEX(boot_"
                        + limit
                        + "_read,{boot_row_<end>})),FALSE)",
                formula);
    }

    /** Each end's fibres at a position, over the float. */
    static void positions(LineSet<PositionRow> rows) {
        for (ShaftEnd end : ShaftEnd.values()) {
            fibres(rows.since(SINCE).at(end), end);
        }
    }

    /** What fibres come to over the travel, and what is wrong; a table of the card's scenario. */
    static void declare(LiveLines lines) {
        for (ShaftEnd end : ShaftEnd.values()) {
            totals(LineSet.in(lines, Section.MATING, Grid.SCENARIO_SIDE).since(SINCE).at(end), end);
        }
        for (ShaftEnd end : ShaftEnd.values()) {
            strain(
                    LineSet.in(lines, Section.SIDE_WORK, Grid.SCENARIO_SIDE).since(SINCE).at(end),
                    end);
        }
        table(lines);
    }

    private static void fibres(LineSet<PositionRow> rows, ShaftEnd end) {
        rows.revised(7)
                .with(geometry(nearest()))
                .mm("boot_least_<end>", "<Inner> boot, shortest fibre")
                .is(
                        Given.when(
                                "{boot_on_<end>}=1",
                                """
                                SQRT(MAX(0,<line>+IF(ABS(<slope>)<<bend>,0-<slope>^2/<bend>,
                                <bend>-2*ABS(<slope>))))
                                """),
                        row -> of(row, end, BootStretch::shortest));
        rows.with(most("float_out", "out"))
                .with(most("float_in", "in"))
                .mm("boot_most_<end>", "<Inner> boot, longest fibre")
                .is(
                        Given.when("{boot_on_<end>}=1", "SQRT(MAX(0,<most_out>,<most_in>))"),
                        row -> of(row, end, BootStretch::longest));
    }

    private static double of(PositionRow row, ShaftEnd end, ToDoubleFunction<BootStretch> figure) {
        return row.after().boot(end).stream()
                .mapToDouble(figure)
                .filter(Double::isFinite)
                .findAny()
                .orElse(Double.NaN);
    }

    /** The fibres of the card's scenario, as charts draw them. */
    private static void table(LiveLines lines) {
        LineSet<SideResult> set =
                LineSet.in(lines, Section.MATING_TABLE, Grid.CHART_POINT)
                        .since(SINCE)
                        .only(Card.SHAFT, Lacking.NOT_AVAILABLE);
        set.shown("boot_table_travel", "Travel, bump +")
                .is(
                        index -> onCard("travel", index),
                        (result, index) -> result.fitted().get(index.row()).travel());
        for (ShaftEnd end : ShaftEnd.values()) {
            LineSet<SideResult> fibres =
                    LineSet.in(lines, Section.MATING_TABLE, Grid.CHART_POINT)
                            .since(SINCE)
                            .at(end)
                            .only(
                                    new Known<>(
                                            EndText.of(
                                                    end,
                                                    "IF(ISNUMBER({shop_e}),"
                                                            + Card.cell("boot_on_<end>")
                                                            + "=1,FALSE)"),
                                            (sizing, index) ->
                                                    Card.SHAFT
                                                            .source()
                                                            .of(sizing, index)
                                                            .filter(shop -> seated(shop, end))),
                                    Lacking.NOT_AVAILABLE);
            fibres.shown("boot_table_least_<end>", "<Inner> boot, shortest fibre")
                    .is(
                            index -> onCard("boot_least_<end>", index),
                            (result, index) -> of(result, index, end, BootStretch::shortest));
            fibres.shown("boot_table_most_<end>", "<Inner> boot, longest fibre")
                    .is(
                            index -> onCard("boot_most_<end>", index),
                            (result, index) -> of(result, index, end, BootStretch::longest));
            LineSet<Sizing> limits =
                    LineSet.in(lines, Section.MATING_TABLE, Grid.CHART_POINT).since(SINCE).at(end);
            limit(limits, end, "least", "shortest", Boot::shortestFibre);
            limit(limits, end, "most", "longest", Boot::longestFibre);
        }
    }

    /** A limit as charts draw it, which leave out what is not available. */
    private static void limit(
            LineSet<Sizing> all,
            ShaftEnd end,
            String limit,
            String word,
            Function<Boot, OptionalDouble> core) {
        String takes = EndText.of(end, Card.cell("boot_takes_" + limit + "_<end>"));
        all.only(
                        new Known<>(
                                "IF(ISNUMBER({shop_e}),ISNUMBER(" + takes + "),FALSE)",
                                (sizing, index) ->
                                        Card.SHAFT
                                                .source()
                                                .of(sizing, index)
                                                .map(shop -> core.apply(boot(shop, end)))
                                                .filter(OptionalDouble::isPresent)),
                        Lacking.NOT_AVAILABLE)
                .shown("boot_table_takes_" + limit + "_<end>", "<Inner> boot takes, " + word)
                .is(takes, known -> known.orElseThrow());
    }

    private static String onCard(String line, Index index) {
        return "INDEX("
                + line
                + "~,(card_index-1)*"
                + Grid.POSITION.rows()
                + "+"
                + (index.row() + 1)
                + ")/tape_mm";
    }

    private static double of(
            SideResult result, Index index, ShaftEnd end, ToDoubleFunction<BootStretch> figure) {
        return result.fitted().get(index.row()).boot(end).stream()
                .mapToDouble(figure)
                .findAny()
                .orElseThrow();
    }

    private static boolean seated(SideResult result, ShaftEnd end) {
        return boot(result, end).seats().isPresent();
    }

    private static Boot boot(SideResult result, ShaftEnd end) {
        return result.setup().joint(end).boot();
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
        total(all, "boot_least", "shortest fibre", "MIN", BootStretch::shortest, end, -1);
        total(all, "boot_most", "longest fibre", "MAX", BootStretch::longest, end, 1);
        all.only(
                        new Known<>(
                                EndText.of(
                                        end,
                                        "IF({ready}=1,ISNUMBER({float_angle_<end>#"
                                                + shaftwright.shaft.TravelSteps.RIDE
                                                + "}),FALSE)"),
                                (sizing, index) ->
                                        sizing.result(index)
                                                .filter(
                                                        result ->
                                                                result.atRide()
                                                                        .endFloat()
                                                                        .isPresent())),
                        Lacking.EMPTY)
                .deg("boot_angle_most_<end>", "<Inner> joint's steepest angle, floated")
                .is(
                        "DEGREES(MAX({float_angle_<end>:all}))",
                        result ->
                                result.fitted().stream()
                                        .map(FittedPosition::endFloat)
                                        .flatMap(Optional::stream)
                                        .mapToDouble(at -> at.angle(end))
                                        .max()
                                        .orElseThrow());
    }

    private static void total(
            LineSet<Sizing> all,
            String table,
            String words,
            String function,
            ToDoubleFunction<BootStretch> core,
            ShaftEnd end,
            int sense) {
        all.only(
                        new Known<>(
                                EndText.of(end, "IF({ready}=1,{boot_on_<end>}=1,FALSE)"),
                                (sizing, index) ->
                                        sizing.result(index).filter(result -> seated(result, end))),
                        Lacking.EMPTY)
                .shown(table + "_travel_<end>", "<Inner> boot over the travel, " + words)
                .is(
                        function + "({" + table + "_<end>:all})/tape_mm",
                        result ->
                                sense
                                        * result.greatestOfBoot(
                                                        end, at -> sense * core.applyAsDouble(at))
                                                .value());
    }

    private static void strain(LineSet<Sizing> all, ShaftEnd end) {
        Function<SideResult, Optional<BootStrain>> core = result -> BootStrain.of(result, end);
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
        LineSet<SideResult> results = all.only(Known.RESULT, Lacking.NOT_AVAILABLE).with(over);
        results.whole("boot_strain_<end>", "What the <inner> boot does not take (0 none)")
                .is(
                        new Cases()
                                .when("<short>><near>", 1)
                                .when("<long>><near>", 2)
                                .when("<bent>><near>", 3)
                                .otherwise("0"),
                        result -> core.apply(result).map(found -> found.kind().number()).orElse(0));
        results.mm("boot_strain_by_<end>", "… by how much, mm or rad")
                .is(
                        "CHOOSE({boot_strain_<end>}+1,0,<short>,<long>,<bent>)",
                        result ->
                                core.apply(result).map(found -> found.worst().value()).orElse(0.0));
        results.mm("boot_strain_at_<end>", "… at travel")
                .is(
                        """
                        IF({boot_strain_<end>}=0,0,INDEX({travel:all},CHOOSE({boot_strain_<end>},
                        MATCH(MAX({boot_most_<end>:all}),{boot_most_<end>:all},0),
                        MATCH(MIN({boot_least_<end>:all}),{boot_least_<end>:all},0),
                        MATCH(MAX({float_angle_<end>:all}),{float_angle_<end>:all},0))))
                        """,
                        result ->
                                core.apply(result)
                                        .map(found -> found.worst().travel())
                                        .orElse(0.0));
    }
}
