package shaftwright.workbook;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import shaftwright.joint.MountedJoint;
import shaftwright.study.Wording;
import shaftwright.units.Length;
import shaftwright.units.LengthStyle;
import shaftwright.units.LengthUnit;

/**
 * What would give a scenario more room: every single change that a builder is likely to think of,
 * computed in full for both sides and ranked. What makes a misfit fit comes first, cheapest first,
 * then what gains most. When no single change does, pairs of them are tried.
 *
 * <p>Three amounts are tried, up to a limit that is still a modification and not another vehicle,
 * and below the first that fits the least is found in steps of the shop's scale. Where none fits,
 * the amount that gains most counts; where the scenario fits already, one coarse step. Limits and
 * steps: common practice, no source.
 */
public final class LeverSearch {
    private static final int MOST = 12;
    private static final double LEAST_GAIN = 0.01;

    /** Amounts tried before the least that fits is looked for between two of them. */
    private static final int PARTS = 3;

    private final Sizing sizing;
    private final int scenario;
    private final ScenarioOutcome now;
    private final boolean inch;
    private final List<Lever> found = new ArrayList<>();

    private LeverSearch(Sizing sizing, int scenario) {
        this.sizing = sizing;
        this.scenario = scenario;
        now = sizing.scenario(scenario);
        inch = sizing.unit() == LengthUnit.INCH;
    }

    /** Ranked changes of a scenario, best first; none when it has no results. */
    public static List<Lever> of(Sizing sizing, int scenario) {
        LeverSearch search = new LeverSearch(sizing, scenario);
        if (!search.now.computed()) {
            return List.of();
        }
        search.singles();
        if (!search.now.holds() && !search.anyFits()) {
            search.pairs();
        }
        search.found.sort(new Rank());
        return List.copyOf(search.found.subList(0, Math.min(MOST, search.found.size())));
    }

    private static final class Rank implements Comparator<Lever> {
        @Override
        public int compare(Lever a, Lever b) {
            if (a.fits() != b.fits()) {
                return a.fits() ? -1 : 1;
            }
            int cheaper = a.fits() ? Double.compare(a.cost(), b.cost()) : 0;
            return cheaper != 0 ? cheaper : Double.compare(b.gain(), a.gain());
        }
    }

    private void singles() {
        lengths();
        for (String end : ENDS) {
            counterbore(end);
            deeperCup(end);
            parts(end, "joint_name", "joint_");
            parts(end, "boot_name", "boot_");
        }
        lengthPreference();
        if (!text("blank_choice").equalsIgnoreCase("auto")) {
            add("any blank of the list", List.of(Change.text("blank_choice", scenario, "auto")));
        }
    }

    /** Another length inside the same window, where that alone makes it fit. */
    private void lengthPreference() {
        if (now.holds()) {
            return;
        }
        for (double bias : BIASES) {
            List<Change> changes = List.of(Change.number("length_bias", scenario, bias));
            if (bias != number("length_bias") && sizing.trial(scenario, changes).holds()) {
                add("length preference " + Wording.rounded(bias, 2), changes);
                return;
            }
        }
    }

    /** The usual one, then from the short end to the long one. */
    private static final double[] BIASES = {0.25, 0, 0.5, 0.75, 1};

    private static final String[] ENDS = {"inner", "outer", "both"};

    private static String[] ends(String end) {
        return end.equals("both") ? new String[] {"inner", "outer"} : new String[] {end};
    }

    /** Lengths of the scenario itself. */
    private void lengths() {
        double quarter = inch ? 6.35 : 5;
        double fine = inch ? 25.4 / 16 : 1;
        double far = inch ? 76.2 : 75;
        scan(
                "limit strap",
                " less droop",
                "droop_limit",
                -1,
                quarter,
                fine,
                number("droop_limit") / 2);
        if (text("bump_rule").equalsIgnoreCase("clearance")) {
            scan(
                    "bump stop",
                    " less bump",
                    "clearance_wanted",
                    1,
                    quarter,
                    fine,
                    now.side(Side.LEFT).bump() / 2);
        } else {
            scan(
                    "bump stop",
                    " less bump",
                    "bump_limit",
                    -1,
                    quarter,
                    fine,
                    number("bump_limit") / 2);
        }
        scan("transaxle", " higher", "transaxle_up", 1, quarter, fine, far);
        scan("transaxle", " lower", "transaxle_up", -1, quarter, fine, far);
        scan("transaxle", " further forward", "transaxle_forward", 1, quarter, fine, far);
        scan("transaxle", " further back", "transaxle_forward", -1, quarter, fine, far);
        scan("hubs", " further out on each side", "hub_shift", 1, quarter, fine, far);
        scan("hubs", " further in on each side", "hub_shift", -1, quarter, fine, far);
        scan("inward margin", " smaller", "margin_inward", -1, fine, fine, number("margin_inward"));
        scan(
                "outward margin",
                " smaller",
                "margin_outward",
                -1,
                fine,
                fine,
                number("margin_outward"));
    }

    private void scan(
            String what,
            String how,
            String input,
            int sense,
            double coarse,
            double fine,
            double most) {
        walk(coarse, fine, most, new Moved(what, how, input, sense));
    }

    /** Something of the scenario moved, or a limit taken back. */
    private final class Moved implements Means {
        private final String what;
        private final String how;
        private final String input;
        private final int sense;

        Moved(String what, String how, String input, int sense) {
            this.what = what;
            this.how = how;
            this.input = input;
            this.sense = sense;
        }

        @Override
        public String words(double amount) {
            return what + " " + shown(amount) + how;
        }

        @Override
        public List<Change> changes(double amount) {
            return List.of(Change.number(input, scenario, number(input) + sense * amount));
        }
    }

    /** The race's ring seat sunk deeper, up to a quarter of the race's width. */
    private void counterbore(String end) {
        double most = Double.POSITIVE_INFINITY;
        for (String one : ends(end)) {
            double width = 2 * joint(one).joint().raceHalfWidth();
            most = Math.min(most, width / 4 - number("counterbore_" + one));
        }
        double fine = inch ? 25.4 / 16 : 1;
        walk(
                fine,
                fine,
                most,
                new Deepened(end, "race", "counterbore_", "ring seat sunk ", " deeper"));
    }

    /** A spacer between joint and cup moves the joint away from the cup's bottom. */
    private void deeperCup(String end) {
        double fine = inch ? 25.4 / 16 : 1;
        walk(
                2 * fine,
                fine,
                inch ? 19.05 : 20,
                new Deepened(end, "end", "joint_spacer_", "spacer of ", " between joint and cup"));
    }

    /** The same amount more at one end or at both. */
    private final class Deepened implements Means {
        private final String end;
        private final String what;
        private final String input;
        private final String before;
        private final String after;

        Deepened(String end, String what, String input, String before, String after) {
            this.end = end;
            this.what = what;
            this.input = input;
            this.before = before;
            this.after = after;
        }

        @Override
        public String words(double amount) {
            return before + shown(amount) + after + at(end, what);
        }

        @Override
        public List<Change> changes(double amount) {
            List<Change> changes = new ArrayList<>();
            for (String one : ends(end)) {
                changes.add(Change.number(input + one, scenario, number(input + one) + amount));
            }
            return changes;
        }
    }

    private void parts(String end, String column, String input) {
        for (String name : sizing.parts().names(column)) {
            swap(end, input, name, name + at(end, "end"));
        }
    }

    private void swap(String end, String input, String name, String words) {
        List<Change> changes = new ArrayList<>();
        for (String one : ends(end)) {
            if (!text(input + one).equalsIgnoreCase(name)) {
                changes.add(Change.text(input + one, scenario, name));
            }
        }
        if (changes.size() == ends(end).length) {
            add(words, changes);
        }
    }

    private static String at(String end, String what) {
        return end.equals("both")
                ? (what.equals("race") ? ", both races" : ", both ends")
                : ", " + end + " " + what;
    }

    /** A change by an amount. */
    private interface Means {
        String words(double amount);

        List<Change> changes(double amount);
    }

    /**
     * Where the scenario fits already, one coarse step; else the least amount that makes it fit.
     */
    private void walk(double coarse, double fine, double most, Means means) {
        if (now.holds()) {
            if (coarse <= most + LEAST_GAIN) {
                add(means.words(coarse), means.changes(coarse));
            }
            return;
        }
        int steps = (int) Math.floor((most + LEAST_GAIN) / fine);
        Tried below = new Tried(0, now);
        Tried best = null;
        for (int part = 1; part <= PARTS; part++) {
            int step = steps * part / PARTS;
            ScenarioOutcome outcome = step > below.step ? trial(step * fine, means) : null;
            if (outcome == null) {
                continue;
            }
            Tried tried = new Tried(step, outcome);
            if (outcome.holds()) {
                best = least(below, tried, fine, means);
                break;
            }
            if (best == null || outcome.narrowerWindow() > best.outcome.narrowerWindow()) {
                best = tried;
            }
            below = tried;
        }
        if (best != null) {
            double amount = best.step * fine;
            add(means.words(amount), means.changes(amount), best.outcome);
        }
    }

    /** So many fine steps of a change, and what comes of them. */
    private record Tried(int step, ScenarioOutcome outcome) {}

    /** Fewest fine steps that fit, halved between some that do not and some that do. */
    private Tried least(Tried below, Tried fitting, double fine, Means means) {
        int not = below.step;
        Tried fits = fitting;
        while (fits.step - not > 1) {
            int middle = (not + fits.step) / 2;
            ScenarioOutcome outcome = trial(middle * fine, means);
            if (outcome != null && outcome.holds()) {
                fits = new Tried(middle, outcome);
            } else {
                not = middle;
            }
        }
        return fits;
    }

    /** The outcome with an amount of a change, null when it can't be computed. */
    private ScenarioOutcome trial(double amount, Means means) {
        ScenarioOutcome tried = sizing.trial(scenario, means.changes(amount));
        return tried.computed() ? tried : null;
    }

    private void add(String words, List<Change> changes) {
        ScenarioOutcome tried = sizing.trial(scenario, changes);
        if (tried.computed()) {
            add(words, changes, tried);
        }
    }

    private void add(String words, List<Change> changes, ScenarioOutcome tried) {
        double gain = tried.narrowerWindow() - now.narrowerWindow();
        boolean cures = tried.holds() && !now.holds();
        if (gain > LEAST_GAIN || cures) {
            found.add(lever(words, changes, tried));
        }
    }

    private Lever lever(String words, List<Change> changes, ScenarioOutcome tried) {
        return new Lever(
                words,
                tried.narrowerWindow() - now.narrowerWindow(),
                tried.cost().total() - now.cost().total(),
                tried.holds(),
                changes);
    }

    private boolean anyFits() {
        for (Lever lever : found) {
            if (lever.fits()) {
                return true;
            }
        }
        return false;
    }

    /** Two changes at once; those that change the same cell make no pair. */
    private void pairs() {
        List<Lever> singles = List.copyOf(found);
        for (int i = 0; i < singles.size(); i++) {
            for (int j = i + 1; j < singles.size(); j++) {
                Lever a = singles.get(i);
                Lever b = singles.get(j);
                if (!sameCell(a, b)) {
                    pair(a, b);
                }
            }
        }
    }

    private void pair(Lever a, Lever b) {
        List<Change> changes = new ArrayList<>(a.changes());
        changes.addAll(b.changes());
        ScenarioOutcome tried = sizing.trial(scenario, changes);
        if (tried.holds()) {
            found.add(lever(a.words() + "; and " + b.words(), changes, tried));
        }
    }

    private static boolean sameCell(Lever a, Lever b) {
        for (Change one : a.changes()) {
            for (Change other : b.changes()) {
                if (one.name().equals(other.name()) && one.place() == other.place()) {
                    return true;
                }
            }
        }
        return false;
    }

    private MountedJoint joint(String end) {
        SideOutcome left = now.side(Side.LEFT);
        return end.equals("inner") ? left.inner() : left.outer();
    }

    private double number(String name) {
        return sizing.inputs().number(name, new Index(Side.LEFT, scenario, 0));
    }

    private String text(String name) {
        return sizing.inputs().text(name, new Index(Side.LEFT, scenario, 0));
    }

    /** Amounts are steps of the shop's scale, so that rounding them hides nothing. */
    private String shown(double mm) {
        LengthStyle style = inch ? LengthStyle.SIXTY_FOURTHS : LengthStyle.MILLIMETRES;
        return new Length(mm).format(style);
    }
}
