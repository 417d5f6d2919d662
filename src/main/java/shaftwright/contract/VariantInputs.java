package shaftwright.contract;

import static shaftwright.contract.Grid.*;
import static shaftwright.contract.InputKind.*;

import java.util.List;
import shaftwright.contract.Input.Range;

/** Which scenario is varied, and the grid over two of its inputs. */
final class VariantInputs {
    private VariantInputs() {}

    static void declare(List<Input> all) {
        all.add(
                Input.words(
                        "try_scenario",
                        BOOK,
                        "Scenario to vary",
                        TEXT,
                        List.of(),
                        "Letter of the scenario of which changes and the grid below are computed by"
                                + " a fill. Empty: none."));
        axis(all, "across", "across", SweepInput.TYRE);
        axis(all, "down", "down", SweepInput.HUBS);
    }

    private static void axis(List<Input> all, String name, String word, SweepInput usual) {
        all.add(
                Input.words(
                                "sweep_" + name,
                                BOOK,
                                "Varied " + word,
                                CHOICE,
                                SweepInput.words(),
                                "What changes from cell to cell " + word + " the grid.")
                        .starting(usual.word(), usual.word()));
        Range any = new Range(-1000, 2000);
        all.add(
                Input.length(
                        "sweep_" + name + "_first",
                        BOOK,
                        "Varied " + word + ", from",
                        Ranges.OFFSET,
                        any,
                        "Its smallest value in the grid. Empty: no grid."));
        all.add(
                Input.length(
                        "sweep_" + name + "_last",
                        BOOK,
                        "Varied " + word + ", to",
                        Ranges.OFFSET,
                        any,
                        "Its greatest value in the grid."));
    }
}
