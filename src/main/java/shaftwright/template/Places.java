package shaftwright.template;

import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.Map;
import shaftwright.build.Side;
import shaftwright.contract.Contract;
import shaftwright.contract.Grid;
import shaftwright.live.LiveLines;

/** Where every defined name of a new workbook stands. */
final class Places {
    private final Map<String, Run> runs = new LinkedHashMap<>();

    void put(Run run) {
        if (runs.putIfAbsent(run.name(), run) != null) {
            throw new IllegalStateException(run.name() + " is laid out twice");
        }
    }

    Collection<Run> all() {
        return runs.values();
    }

    /**
     * Place of a quantity on a side.
     *
     * @throws IllegalStateException if it was not laid out
     */
    Run run(String quantity, Side side) {
        Run run = runs.get(grid(quantity).sided() ? quantity + Contract.suffix(side) : quantity);
        if (run == null) {
            throw new IllegalStateException(quantity + " is not laid out");
        }
        return run;
    }

    private static Grid grid(String quantity) {
        return LiveLines.all().has(quantity)
                ? LiveLines.all().line(quantity).grid()
                : Contract.input(quantity).grid();
    }
}
