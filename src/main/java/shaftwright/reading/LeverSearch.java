package shaftwright.reading;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import shaftwright.build.Side;
import shaftwright.contract.Index;
import shaftwright.joint.MountedJoint;
import shaftwright.shaft.ShaftEnd;
import shaftwright.study.Price;
import shaftwright.study.Wording;
import shaftwright.units.Length;
import shaftwright.units.LengthStyle;
import shaftwright.units.LengthUnit;

/**
 * What would give a scenario more room: every single change that a builder is likely to think of,
 * computed in full for both sides and ranked. What makes a misfit fit comes first, cheapest first,
 * then what gains most. When no single change does, pairs of them are tried. Smaller margins are no
 * change of the vehicle and never among them: they are the builder's choice, said apart.
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

    /** What makes it fit by cost, the rest by gain alone. */
    private static final Comparator<Lever> BEST_FIRST =
            Comparator.comparing(Lever::fits, Comparator.reverseOrder())
                    .thenComparingDouble(LeverSearch::cost)
                    .thenComparing(Comparator.comparingDouble(Lever::gain).reversed());

    private final Sizing sizing;
    private final int scenario;
    private final ScenarioOutcome now;
    private final boolean inch;
    private final List<Found> found = new ArrayList<>();

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
        List<Lever> levers = new ArrayList<>();
        for (Found one : search.found) {
            levers.add(one.lever);
        }
        levers.sort(BEST_FIRST);
        return List.copyOf(levers.subList(0, Math.min(MOST, levers.size())));
    }

    /**
     * What a scenario that does not fit lacks of its margins, where smaller ones would do: a
     * sentence for beside the changes. Empty where its window is not short, or would be short with
     * no margins at all.
     */
    public static Optional<String> marginChoice(Sizing sizing, int scenario) {
        LeverSearch search = new LeverSearch(sizing, scenario);
        return search.now.narrowerWindow() < 0 ? search.smallerMargins() : Optional.empty();
    }

    /** The least that both margins together must give up, the greater one first. */
    private Optional<String> smallerMargins() {
        if (sizing.doubts().uncertainty().builtUp().isPresent()) {
            return Optional.empty();
        }
        double inward = number("margin_inward");
        double outward = number("margin_outward");
        int steps = (int) Math.floor((inward + outward + LEAST_GAIN) / fine());
        for (int step = 1; step <= steps; step++) {
            // Equal ones shrink alike; a smaller one is left alone until the other is no greater.
            double left = inward + outward - step * fine();
            double less = Math.max(0, Math.min(Math.min(inward, outward), left / 2));
            double more = Math.max(0, left - less);
            ScenarioOutcome tried =
                    sizing.trial(
                            scenario,
                            List.of(
                                    Change.number(
                                            "margin_inward",
                                            scenario,
                                            inward <= outward ? less : more),
                                    Change.number(
                                            "margin_outward",
                                            scenario,
                                            inward <= outward ? more : less)));
            if (tried.holds()) {
                return Optional.of(
                        "Margins "
                                + shown(step * fine())
                                + " smaller in all would do too. How much to keep is your choice:"
                                + " it is safety given up, not room gained.");
            }
        }
        return Optional.empty();
    }

    private double fine() {
        return inch ? 25.4 / 16 : 1;
    }

    /** A change with the price of the work that it takes. */
    private record Found(Lever lever, Price work) {}

    /** What is not priced counts as dear: nobody knows that it is cheap. */
    private static double cost(Lever lever) {
        return lever.fits() ? lever.cost().amount().orElse(Double.POSITIVE_INFINITY) : 0;
    }

    private void singles() {
        lengths();
        for (Set<ShaftEnd> ends : ENDS) {
            counterbore(ends);
            deeperCup(ends);
            parts(ends, "joint_name", "joint_");
            parts(ends, "boot_name", "boot_");
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

    /** Each change is made on both sides of the vehicle. */
    private static final int SIDES = 2;

    private static final List<Set<ShaftEnd>> ENDS =
            List.of(
                    EnumSet.of(ShaftEnd.INNER),
                    EnumSet.of(ShaftEnd.OUTER),
                    EnumSet.allOf(ShaftEnd.class));

    /** Lengths of the scenario itself. */
    private void lengths() {
        double quarter = inch ? 6.35 : 5;
        double fine = fine();
        double far = inch ? 76.2 : 75;
        scan(
                "limit strap",
                " less droop",
                "droop_limit",
                -1,
                quarter,
                fine,
                number("droop_limit") / 2,
                work("strap_price", SIDES));
        if (text("bump_rule").equalsIgnoreCase("clearance")) {
            scan(
                    "bump stop",
                    " less bump",
                    "clearance_wanted",
                    1,
                    quarter,
                    fine,
                    now.side(Side.LEFT).bump() / 2,
                    work("bump_stop_price", SIDES));
        } else {
            scan(
                    "bump stop",
                    " less bump",
                    "bump_limit",
                    -1,
                    quarter,
                    fine,
                    number("bump_limit") / 2,
                    work("bump_stop_price", SIDES));
        }
        Price mounts = work("transaxle_price", 1);
        scan("transaxle", " higher", "transaxle_up", 1, quarter, fine, far, mounts);
        scan("transaxle", " lower", "transaxle_up", -1, quarter, fine, far, mounts);
        scan("transaxle", " further forward", "transaxle_forward", 1, quarter, fine, far, mounts);
        scan("transaxle", " further back", "transaxle_forward", -1, quarter, fine, far, mounts);
        Price hubs = work("hub_price", SIDES);
        scan("hubs", " further out on each side", "hub_shift", 1, quarter, fine, far, hubs);
        scan("hubs", " further in on each side", "hub_shift", -1, quarter, fine, far, hubs);
    }

    /** So many pieces of work by the builder's price for one. */
    private Price work(String input, int pieces) {
        double typed = sizing.inputs().number(input);
        return Double.isNaN(typed) ? Price.lacking(Price.NOT_PRICED) : Price.of(pieces * typed);
    }

    private void scan(
            String what,
            String how,
            String input,
            int sense,
            double coarse,
            double fine,
            double most,
            Price work) {
        walk(coarse, fine, most, new Moved(what, how, input, sense, work));
    }

    /** Something of the scenario moved, or a limit taken back. */
    private final class Moved implements Means {
        private final String what;
        private final String how;
        private final String input;
        private final int sense;
        private final Price work;

        Moved(String what, String how, String input, int sense, Price work) {
            this.what = what;
            this.how = how;
            this.input = input;
            this.sense = sense;
            this.work = work;
        }

        @Override
        public Price work() {
            return work;
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
    private void counterbore(Set<ShaftEnd> ends) {
        double most = Double.POSITIVE_INFINITY;
        for (ShaftEnd end : ends) {
            double width = 2 * joint(end).joint().raceHalfWidth();
            most = Math.min(most, width / 4 - number("counterbore_" + end.word()));
        }
        walk(
                fine(),
                fine(),
                most,
                new Deepened(
                        ends,
                        "race",
                        "counterbore_",
                        "ring seat sunk ",
                        " deeper",
                        work("counterbore_price", SIDES * ends.size())));
    }

    /** A spacer between joint and cup moves the joint away from the cup's bottom. */
    private void deeperCup(Set<ShaftEnd> ends) {
        walk(
                2 * fine(),
                fine(),
                inch ? 19.05 : 20,
                new Deepened(
                        ends,
                        "end",
                        "joint_spacer_",
                        "spacer of ",
                        " between joint and cup",
                        work("spacer_price", SIDES * ends.size())));
    }

    /** The same amount more at one end or at both. */
    private final class Deepened implements Means {
        private final Set<ShaftEnd> ends;
        private final String what;
        private final String input;
        private final String before;
        private final String after;
        private final Price work;

        Deepened(
                Set<ShaftEnd> ends,
                String what,
                String input,
                String before,
                String after,
                Price work) {
            this.ends = ends;
            this.what = what;
            this.input = input;
            this.before = before;
            this.after = after;
            this.work = work;
        }

        @Override
        public Price work() {
            return work;
        }

        @Override
        public String words(double amount) {
            return before + shown(amount) + after + at(ends, what);
        }

        @Override
        public List<Change> changes(double amount) {
            List<Change> changes = new ArrayList<>();
            for (ShaftEnd end : ends) {
                changes.add(
                        Change.number(
                                input + end.word(), scenario, number(input + end.word()) + amount));
            }
            return changes;
        }
    }

    private void parts(Set<ShaftEnd> ends, String column, String input) {
        for (String name : sizing.parts().names(column)) {
            swap(ends, input, name, name + at(ends, "end"));
        }
    }

    private void swap(Set<ShaftEnd> ends, String input, String name, String words) {
        List<Change> changes = new ArrayList<>();
        for (ShaftEnd end : ends) {
            if (!text(input + end.word()).equalsIgnoreCase(name)) {
                changes.add(Change.text(input + end.word(), scenario, name));
            }
        }
        if (changes.size() == ends.size()) {
            add(words, changes);
        }
    }

    private static String at(Set<ShaftEnd> ends, String what) {
        return ends.size() > 1
                ? (what.equals("race") ? ", both races" : ", both ends")
                : ", " + ends.iterator().next().word() + " " + what;
    }

    /** A change by an amount. */
    private interface Means {
        String words(double amount);

        List<Change> changes(double amount);

        /** What the work on the vehicle costs, parts of the tables apart. */
        Price work();
    }

    /**
     * Where the scenario fits already, one coarse step; else the least amount that makes it fit.
     */
    private void walk(double coarse, double fine, double most, Means means) {
        if (now.holds()) {
            if (coarse <= most + LEAST_GAIN) {
                add(means.words(coarse), means.changes(coarse), means.work());
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
            add(means.words(amount), means.changes(amount), best.outcome, means.work());
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

    /** A change that takes no work but what its parts cost. */
    private void add(String words, List<Change> changes) {
        add(words, changes, Price.of(0));
    }

    private void add(String words, List<Change> changes, Price work) {
        ScenarioOutcome tried = sizing.trial(scenario, changes);
        if (tried.computed()) {
            add(words, changes, tried, work);
        }
    }

    private void add(String words, List<Change> changes, ScenarioOutcome tried, Price work) {
        double gain = tried.narrowerWindow() - now.narrowerWindow();
        boolean cures = tried.holds() && !now.holds();
        if (gain > LEAST_GAIN || cures) {
            found.add(new Found(lever(words, changes, tried, work), work));
        }
    }

    private Lever lever(String words, List<Change> changes, ScenarioOutcome tried, Price work) {
        Price cost = work.plus(tried.cost().total().minus(now.cost().total()));
        return new Lever(
                words,
                tried.narrowerWindow() - now.narrowerWindow(),
                cost.isKnown() ? cost : Price.lacking(Price.NOT_PRICED),
                tried.holds(),
                changes);
    }

    private boolean anyFits() {
        for (Found one : found) {
            if (one.lever.fits()) {
                return true;
            }
        }
        return false;
    }

    /** Two changes at once; those that change the same cell make no pair. */
    private void pairs() {
        List<Found> singles = List.copyOf(found);
        for (int i = 0; i < singles.size(); i++) {
            for (int j = i + 1; j < singles.size(); j++) {
                if (!sameCell(singles.get(i).lever, singles.get(j).lever)) {
                    pair(singles.get(i), singles.get(j));
                }
            }
        }
    }

    private void pair(Found a, Found b) {
        List<Change> changes = new ArrayList<>(a.lever.changes());
        changes.addAll(b.lever.changes());
        ScenarioOutcome tried = sizing.trial(scenario, changes);
        if (tried.holds()) {
            Price work = a.work.plus(b.work);
            String words = a.lever.words() + "; and " + b.lever.words();
            found.add(new Found(lever(words, changes, tried, work), work));
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

    private MountedJoint joint(ShaftEnd end) {
        return now.side(Side.LEFT).joint(end);
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
