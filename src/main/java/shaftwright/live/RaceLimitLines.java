package shaftwright.live;

import java.util.Optional;
import java.util.function.Function;
import shaftwright.shaft.PlungeState;
import shaftwright.shaft.ShaftEnd;

/**
 * Where each race meets its limits in a row of positions, and how far apart the races are then:
 * both inward, both outward, and one pulled out against a stop that is not hard. A first step takes
 * the limits at the mid-stroke angles, a last one at the angles that follow.
 */
final class RaceLimitLines {
    private RaceLimitLines() {}

    /** Which way both races go. */
    private enum Way {
        IN("inward"),
        OUT("outward");

        final String word;

        Way(String word) {
            this.word = word;
        }

        String in(String text) {
            return text.replace("WAY", this == IN ? "in" : "out");
        }

        /** Limit of an end's race at an angle. */
        String limit(ShaftEnd end, String angle) {
            return this == IN
                    ? CentreFormulas.inwardLimit(end, angle)
                    : CentreFormulas.outwardLimit(end, angle);
        }

        /** A line of an end as it stands that way, positive inward. */
        String stands(ShaftEnd end, String line) {
            String place = "{" + line + (this == IN ? "_in_" : "_out_") + end.shortWord() + "}";
            return this == IN ? place : "(0-" + place + ")";
        }

        PlungeState state(PositionRow row) {
            return this == IN ? row.before().inward() : row.before().outward();
        }
    }

    static void declare(LineSet<PositionRow> rows) {
        for (Way way : Way.values()) {
            both(rows, way);
        }
        LineSet<PositionRow> later = rows.since(2);
        for (ShaftEnd end : ShaftEnd.values()) {
            pulled(later, end);
        }
    }

    private static void both(LineSet<PositionRow> rows, Way way) {
        for (ShaftEnd end : ShaftEnd.values()) {
            rows.mm(
                            EndText.of(end, way.in("first_WAY_<end>")),
                            EndText.of(end, "<Inner> travel " + way.word + ", first step"))
                    .is(
                            way.limit(end, EndText.of(end, "{mid_angle_<end>}")),
                            row ->
                                    way == Way.IN
                                            ? row.joint(end).inward(row.midAngle(end))
                                            : row.joint(end).outward(row.midAngle(end)));
        }
        for (ShaftEnd end : ShaftEnd.values()) {
            rows.rad(
                            EndText.of(end, way.in("angle_WAY_<end>")),
                            EndText.of(end, "<Inner> angle, races " + way.word))
                    .is(
                            CentreFormulas.angle(
                                    end,
                                    way.stands(ShaftEnd.INNER, "first"),
                                    way.stands(ShaftEnd.OUTER, "first")),
                            row -> angle(way.state(row), end));
        }
        for (ShaftEnd end : ShaftEnd.values()) {
            rows.mm(
                            EndText.of(end, way.in("last_WAY_<end>")),
                            EndText.of(end, "<Inner> travel " + way.word))
                    .is(
                            way.limit(end, EndText.of(end, way.in("{angle_WAY_<end>}"))),
                            row ->
                                    end.either(
                                            way.state(row).innerTravel(),
                                            way.state(row).outerTravel()));
        }
        rows.mm(way.in("spacing_WAY"), "Race spacing, both " + way.word)
                .is(
                        CentreFormulas.length(
                                way.stands(ShaftEnd.INNER, "last"),
                                way.stands(ShaftEnd.OUTER, "last")),
                        row -> way.state(row).spacing());
    }

    private static double angle(PlungeState state, ShaftEnd end) {
        return end.either(state.innerAngle(), state.outerAngle());
    }

    /** An end's race pulled out while the other one is in; empty where its stop is hard. */
    private static void pulled(LineSet<PositionRow> rows, ShaftEnd pulled) {
        String of = ", " + pulled.word() + " race pulled out";
        for (ShaftEnd end : ShaftEnd.values()) {
            rows.rad(
                            EndText.of(end, "soft_" + pulled.shortWord() + "_angle_<end>"),
                            EndText.of(end, "<Inner> angle" + of))
                    .is(
                            soft(
                                    pulled,
                                    CentreFormulas.angle(
                                            end,
                                            way(ShaftEnd.INNER, pulled)
                                                    .stands(ShaftEnd.INNER, "first"),
                                            way(ShaftEnd.OUTER, pulled)
                                                    .stands(ShaftEnd.OUTER, "first"))),
                            row -> of(row, pulled, state -> angle(state, end)));
        }
        rows.mm(EndText.of(pulled, "soft_<end>_spacing"), "Race spacing" + of)
                .is(
                        soft(
                                pulled,
                                CentreFormulas.length(
                                        limit(ShaftEnd.INNER, pulled),
                                        limit(ShaftEnd.OUTER, pulled))),
                        row -> of(row, pulled, PlungeState::spacing));
    }

    private static Way way(ShaftEnd end, ShaftEnd pulled) {
        return end == pulled ? Way.OUT : Way.IN;
    }

    private static String limit(ShaftEnd end, ShaftEnd pulled) {
        String angle = "{soft_" + pulled.shortWord() + "_angle_" + end.shortWord() + "}";
        String limit = way(end, pulled).limit(end, angle);
        return end == pulled ? "(0-(" + limit + "))" : limit;
    }

    private static String soft(ShaftEnd end, String formula) {
        return "IF(" + EndText.of(end, "{soft_<end>}") + "=1," + formula + ",\"\")";
    }

    private static double of(
            PositionRow row, ShaftEnd pulled, Function<PlungeState, Double> figure) {
        Optional<PlungeState> state =
                pulled.either(row.before().innerPulled(), row.before().outerPulled());
        return state.map(figure).orElse(Double.NaN);
    }
}
