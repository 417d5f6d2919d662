package shaftwright.live;

import java.util.Collections;
import java.util.LinkedHashSet;
import java.util.Set;
import java.util.regex.MatchResult;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import shaftwright.contract.Grid;

/**
 * Lines of the position table declared once more for the heights at which a mock-up was read: their
 * names begin with {@code stick_}, and what a scenario has for itself is taken from the scenario
 * that the mock-up was built as.
 */
final class StickPlaces implements LineSet.Again {
    /** A place in a formula: its name, and what follows in the braces. */
    private static final Pattern PLACE = Pattern.compile("\\{([a-z][a-z_0-9]*)([^}]*)}");

    private final LiveLines lines;
    private final Set<String> copied = new LinkedHashSet<>();

    StickPlaces(LiveLines lines) {
        this.lines = lines;
    }

    @Override
    public String name(String name) {
        return "stick_" + name;
    }

    @Override
    public String formula(String formula) {
        return PLACE.matcher(formula).replaceAll(found -> Matcher.quoteReplacement(place(found)));
    }

    private String place(MatchResult found) {
        String name = found.group(1);
        String rest = found.group(2);
        if (lines.has(name(name))) {
            return "{" + name(name) + rest + "}";
        }
        Grid grid = lines.line(name).grid();
        if (grid == Grid.SCENARIO_POWER) {
            int power = Integer.parseInt(rest.substring(1)) + 1;
            return ("INDEX({" + name + ":each},({stick_column}-1)*")
                    + (grid.rows() + "+" + power + ")");
        }
        if (grid != Grid.SCENARIO_SIDE) {
            return found.group();
        }
        copied.add(name);
        return "{" + name(name) + "}";
    }

    /** Lines of the scenario that formulas so far take something from, without their prefix. */
    Set<String> copied() {
        return Collections.unmodifiableSet(copied);
    }
}
