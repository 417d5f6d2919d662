package shaftwright.live;

import static shaftwright.contract.Grid.POSITION;
import static shaftwright.contract.Grid.SCENARIO_SIDE;

import java.util.function.Function;
import shaftwright.formula.Pieces;
import shaftwright.shaft.Binding;
import shaftwright.shaft.LengthChoice;
import shaftwright.shaft.LengthWindow;
import shaftwright.shaft.Rounded;
import shaftwright.shaft.SideResult;

/**
 * The length window of one side of each scenario, in all states where those are asked for, and the
 * length chosen in it. A bound of the window stands with the row and the travel at which it binds.
 */
final class WindowLines {
    private static final String LOW_STEP = "0-INT(0-ROUND({e_low}/shop_increment_read,6))";
    private static final String HIGH_STEP = "INT(ROUND({e_high}/shop_increment_read,6))";

    private WindowLines() {}

    static void declare(LiveLines lines) {
        LineSet<SideResult> sides =
                LineSet.in(lines, Section.SIDE_WORK, SCENARIO_SIDE)
                        .only(Known.RESULT, Lacking.NOT_AVAILABLE);
        bound(
                sides.with(words("s_max", "Longest", "MIN", "longest")),
                LengthWindow::longest,
                LengthWindow::ownLongest);
        bound(
                sides.with(words("s_min", "Shortest", "MAX", "shortest")),
                LengthWindow::shortest,
                LengthWindow::ownShortest);
        sides.mm("window_width", "Window").is("{s_max}-{s_min}", result -> result.window().width());
        LineSet<LengthChoice> choices = sides.of((result, index) -> result.choice());
        choices.mm("e_over_s", "End to end less spacing")
                .is(
                        "{seat_in}+{seat_out}+{stub_in}+{stub_out}",
                        choice -> choice.chosen().endToEnd() - choice.chosen().spacing());
        choices.mm("e_low", "Shortest end to end")
                .is("{s_min}+{e_over_s}", choice -> choice.shortest().endToEnd());
        choices.mm("e_high", "Longest end to end")
                .is("{s_max}+{e_over_s}", choice -> choice.longest().endToEnd());
        choices.mm("e_target", "Wanted end to end")
                .is("{e_low}+{length_bias_read}*({e_high}-{e_low})", LengthChoice::target);
        choices.whole("step_fits", "A step fits")
                .is(
                        "IF(AND({s_min}<={s_max}," + LOW_STEP + "<=" + HIGH_STEP + "),1,0)",
                        choice -> choice.rounded() == Rounded.TO_INCREMENT ? 1 : 0);
        choices.mm("e_chosen", "Chosen end to end")
                .is(
                        "IF({step_fits}=1,MIN(MAX(ROUND(ROUND({e_target}/shop_increment_read,6),0),"
                                + (LOW_STEP + ")," + HIGH_STEP)
                                + ")*shop_increment_read,{e_target})",
                        choice -> choice.chosen().endToEnd());
        choices.mm("k_chosen", "Chosen clip to clip")
                .is("{e_chosen}-{stub_in}-{stub_out}", choice -> choice.chosen().clipToClip());
    }

    private static Pieces words(String bound, String label, String extreme, String column) {
        return Pieces.of("bound", bound)
                .and("label", label + " race spacing")
                .and("extreme", extreme)
                .and("column", column)
                .and("vertices", "{<column>_vertex:all}")
                .and("rows", POSITION.rows())
                .and("row", "{<bound>_row}")
                .and("f0", "INDEX({<column>:all},<row>-1)")
                .and("f1", "INDEX({<column>:all},<row>)")
                .and("f2", "INDEX({<column>:all},<row>+1)")
                .and("t0", "INDEX({travel:all},<row>-1)")
                .and("t1", "INDEX({travel:all},<row>)")
                .and("t2", "INDEX({travel:all},<row>+1)")
                .and("rise", "((<f1>-<f0>)/(<t1>-<t0>))")
                .and("bend", "((((<f2>-<f1>)/(<t2>-<t1>))-<rise>)/(<t2>-<t0>))");
    }

    private static void bound(
            LineSet<SideResult> sides,
            Function<LengthWindow, Binding> ofAll,
            Function<LengthWindow, Binding> ofOne) {
        LineSet<Binding> bounds =
                sides.revised(6).of((result, index) -> ofAll.apply(result.window()));
        bounds.mm("<bound>", "<label>")
                .is(StateLines.either("<bound>", "<extreme>(<vertices>)"), Binding::value);
        sides.revised(6)
                .whole("<bound>_row", "<label>: row, in the one state")
                .is(
                        "MATCH(<extreme>(<vertices>),<vertices>,0)",
                        result -> ofOne.apply(result.window()).row() + 1);
        // A row's travel, or that of the parabola's vertex beside it.
        String travel =
                """
                IF(OR(<row>=1,<row>=<rows>),<t1>,IF(<f1>={<bound>},<t1>,
                <t1>-(<rise>+<bend>*(<t1>-<t0>))/(2*<bend>)))
                """;
        bounds.mm("<bound>_travel", "<label>: at travel")
                .is(StateLines.either("<bound>_travel", travel), Binding::travel);
    }
}
