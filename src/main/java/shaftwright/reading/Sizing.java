package shaftwright.reading;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import java.util.Set;
import java.util.concurrent.CompletableFuture;
import java.util.function.IntFunction;
import java.util.stream.IntStream;
import shaftwright.book.Problem;
import shaftwright.build.AllStates;
import shaftwright.build.Build;
import shaftwright.build.Corner;
import shaftwright.build.DriveUnitMove;
import shaftwright.build.DrivenFlanges;
import shaftwright.build.GroundClearance;
import shaftwright.build.MarginChoice;
import shaftwright.build.Market;
import shaftwright.build.Side;
import shaftwright.build.Spares;
import shaftwright.build.Stock;
import shaftwright.build.Uncertainty;
import shaftwright.build.Vehicle;
import shaftwright.build.WorkPrices;
import shaftwright.contract.Contract;
import shaftwright.contract.Index;
import shaftwright.contract.MatingInputs;
import shaftwright.contract.MountLoad;
import shaftwright.contract.StateInputs;
import shaftwright.joint.BoltPattern;
import shaftwright.shaft.CutPlan;
import shaftwright.shaft.InnerFlange;
import shaftwright.shaft.RingSpec;
import shaftwright.shaft.ShaftEnd;
import shaftwright.shaft.SideResult;
import shaftwright.study.CardPrint;
import shaftwright.study.Derivation;
import shaftwright.study.Lack;
import shaftwright.study.PathFacts;
import shaftwright.study.ScenarioVariants;
import shaftwright.study.ScenarioVerdict;
import shaftwright.study.SideDrawing;
import shaftwright.study.SideStudy;
import shaftwright.study.Sweep;
import shaftwright.study.Verdict;
import shaftwright.suspension.DegreeChoice;
import shaftwright.suspension.Kingpin;
import shaftwright.suspension.LinkageKind;
import shaftwright.suspension.MeasuredPath;
import shaftwright.suspension.TapeSettings;
import shaftwright.units.LengthUnit;

/** Everything computed from one workbook's inputs: paths, scenarios, verdicts. */
public final class Sizing {
    /** Said of a scenario column without a name. */
    public static final String UNUSED = "unused";

    public static final String NO_KINGPIN = Lack.KINGPIN.words() + ": see the sheet Measure";
    public static final String ONE_LOCK =
            "all states are asked for, and only one of the two locks is typed";
    public static final String BEYOND_LOCK = "the hubs are steered beyond the locks typed";
    public static final String NO_CENTRE = Lack.CENTRE.words();
    public static final String NO_DROOP = "droop travel is missing";
    public static final String NO_BUMP = "bump travel is missing";
    public static final String NO_CLEARANCE = Lack.CLEARANCE.words();
    public static final String NO_BUMP_LEFT = Lack.BUMP.words();
    public static final String BUMP_BEYOND =
            "bump travel goes beyond the measured or solved heights";
    public static final String DROOP_BEYOND =
            "droop travel goes beyond the measured or solved heights";

    /** Said of a side whose path is to come from readings, when there are none. */
    public static final String NO_READINGS = "no readings yet";

    /** Said of a side whose path is to come from a linkage that was not solved yet. */
    public static final String NO_LINKAGE = "no linkage worked out yet: fill";

    private final InputValues inputs;
    private final Parts parts;
    private final JointLimits limits;
    private final Map<Side, SidePath> paths;

    /** Of scenarios with points of their own, by side and scenario. */
    private final Map<Side, Map<Integer, SidePath>> ownPaths;

    private final List<ScenarioOutcome> scenarios = new ArrayList<>();
    private final Map<Integer, ScenarioVerdict> verdicts = new HashMap<>();

    /** Made when first asked for. */
    private CompletableFuture<Variants> variants;

    /** Made when first asked for, likewise. */
    private KnownPrints prints;

    /** Made when first asked for, likewise. */
    private Build build;

    /** Made when first asked for, likewise. */
    private StrengthReader strength;

    /** None while the scenarios are computed that mock-ups were built as. */
    private final Map<Side, SideMockUp> mockUps = new EnumMap<>(Side.class);

    private final Map<Side, Optional<SideDrawing>> drawings = new EnumMap<>(Side.class);

    private final Doubts doubts;
    private Misread misread = Misread.nothing();

    private Sizing(
            InputValues inputs,
            Parts parts,
            JointLimits limits,
            Map<Side, SidePath> paths,
            Map<Side, Map<Integer, SidePath>> ownPaths,
            Doubts doubts) {
        this.inputs = inputs;
        this.parts = parts;
        this.limits = limits;
        this.paths = paths;
        this.ownPaths = ownPaths;
        this.doubts = doubts;
    }

    /**
     * Computes a workbook.
     *
     * @param inputs as read
     * @param problems where to say what is wrong; with an error among them the result is not to be
     *     shown
     */
    public static Sizing of(InputValues inputs, List<Problem> problems) {
        return of(inputs, problems, false);
    }

    /**
     * Computes a workbook whose variants will be asked for: they are tried beside all the rest as
     * soon as there are scenarios to vary, which takes about as long. Nothing of it moves a
     * linkage, which is for one thread at a time.
     */
    public static Sizing withVariants(InputValues inputs, List<Problem> problems) {
        return of(inputs, problems, true);
    }

    private static Sizing of(InputValues inputs, List<Problem> problems, boolean variantsAhead) {
        Parts parts = new Parts(inputs);
        Sizing sizing =
                new Sizing(
                        inputs,
                        parts,
                        JointLimits.of(parts),
                        new EnumMap<>(Side.class),
                        new EnumMap<>(Side.class),
                        new Doubts(inputs));
        if (problems.stream().anyMatch(Problem::isError)) {
            sizing.misread = Misread.of(inputs);
        }
        new PartsCheck(inputs, sizing.parts, problems).run();
        new LoadsCheck(inputs, sizing.parts, problems).run();
        for (Side side : Side.values()) {
            sizing.paths.put(side, sizing.path(side, problems));
        }
        sizing.ownPaths(problems);
        sizing.readMockUps();
        ScenarioReader reader = new ScenarioReader(sizing, problems);
        for (int scenario = 0; scenario < inputs.scenarios(); scenario++) {
            sizing.scenarios.add(reader.of(scenario));
        }
        if (variantsAhead) {
            sizing.variants = CompletableFuture.supplyAsync(() -> Variants.of(sizing));
        }
        sizing.shopLetter(problems);
        new StatesCheck(sizing, problems).run();
        OpenChecks.check(sizing, problems);
        FinishedShafts.check(sizing, problems);
        new MockUpProblems(sizing, problems).run();
        Variants.check(sizing, problems);
        sizing.marginChoice(problems);
        new RestraintCheck(sizing, problems).run();
        return sizing;
    }

    /**
     * What comes of a scenario when something of it is changed; empty while its joints, its travel
     * or a hub's path is not known.
     */
    public Optional<ScenarioVariants> variants(int scenario) {
        return new ScenarioReader(this, new ArrayList<>()).variants(scenario);
    }

    /**
     * A scenario over a grid of two of its inputs, which need not be typed themselves; empty while
     * anything else of it is not known.
     */
    public Optional<Sweep> sweep(int scenario, InputAxis across, InputAxis down) {
        InputValues first = down.typed(across.typed(inputs, scenario), scenario);
        Sizing other = new Sizing(first, parts, limits, paths, ownPaths, doubts);
        other.mockUps.putAll(mockUps);
        return other.variants(scenario)
                .map(
                        variants ->
                                variants.sweep(across.of(this, scenario), down.of(this, scenario)));
    }

    /** The fingerprints that were worked out so far. */
    public KnownPrints prints() {
        if (prints == null) {
            prints = new KnownPrints();
        }
        return prints;
    }

    /** Variants of the scenario that the builder wants varied, computed when first asked for. */
    public Variants variants() {
        if (variants == null) {
            variants = CompletableFuture.completedFuture(Variants.of(this));
        }
        return variants.join();
    }

    private void marginChoice(List<Problem> problems) {
        Uncertainty uncertainty = doubts.uncertainty();
        if (uncertainty.margins() != MarginChoice.TYPED && uncertainty.contributions().isEmpty()) {
            problems.add(
                    Problem.warning(
                            inputs.place("margin_choice", new Index(Side.LEFT, 0, 0)),
                            Contract.input("margin_choice").label(),
                            "\"" + inputs.text("margin_choice") + "\" with nothing to build up",
                            "rows in the table of what may move; the typed margins count until"
                                    + " then"));
        }
    }

    private SidePath path(Side side, List<Problem> problems) {
        // The guide's ticks are about the left side's readings.
        boolean guided = side == Side.LEFT || path(Side.LEFT).readings().path().isPresent();
        SideReadings readings =
                SideReadings.of(
                        inputs,
                        side,
                        tapeSettings(),
                        guided ? OpenChecks.typed(inputs) : Set.of(),
                        problems);
        return readings.source() == side
                ? SidePath.of(inputs, readings, problems)
                : SidePath.again(inputs, readings);
    }

    private void ownPaths(List<Problem> problems) {
        OwnPoints points = new OwnPoints(inputs);
        if (!points.check(this, problems)) {
            return;
        }
        for (Side side : Side.values()) {
            for (int scenario = 0; scenario < inputs.scenarios(); scenario++) {
                Index column = new Index(Side.LEFT, scenario, 0);
                boolean used = !inputs.text("scenario_name", column).isEmpty();
                if (used && points.has(scenario, side) && path(side).chosen().isPresent()) {
                    SidePath path = points.path(scenario, side, path(side), problems);
                    if (!ownPaths.containsKey(side)) {
                        ownPaths.put(side, new HashMap<>());
                    }
                    ownPaths.get(side).put(scenario, path);
                }
            }
        }
    }

    private void readMockUps() {
        Map<Side, SideMockUp> read = new EnumMap<>(Side.class);
        for (Side side : Side.values()) {
            read.put(side, SideMockUp.of(this, side));
        }
        mockUps.putAll(read);
    }

    private void shopLetter(List<Problem> problems) {
        String letter = inputs.text("shop_scenario");
        if (!letter.isEmpty() && shopScenario().isEmpty()) {
            problems.add(
                    Problem.warning(
                            inputs.place("shop_scenario", new Index(Side.LEFT, 0, 0)),
                            Contract.input("shop_scenario").label(),
                            "\"" + letter + "\"",
                            "a letter from A to "
                                    + ScenarioOutcome.letter(scenarios.size() - 1)
                                    + "; the shop cards stay empty"));
        }
    }

    /** Said of a scenario that lacks a joint at this end. */
    public static String noJoint(ShaftEnd end) {
        return "choose an " + end.word() + " joint";
    }

    /** What was typed and can't be used. */
    public Misread misread() {
        return misread;
    }

    public InputValues inputs() {
        return inputs;
    }

    public LengthUnit unit() {
        return inputs.unit();
    }

    public Parts parts() {
        return parts;
    }

    public JointLimits limits() {
        return limits;
    }

    public Doubts doubts() {
        return doubts;
    }

    /** What is typed about torque and what parts carry. */
    public StrengthReader strength() {
        if (strength == null) {
            strength = new StrengthReader(inputs, parts);
        }
        return strength;
    }

    /** A side's mock-up. */
    public SideMockUp mockUp(Side side) {
        return mockUps.getOrDefault(side, SideMockUp.NONE);
    }

    public SideReadings readings(Side side) {
        return paths.get(side).readings();
    }

    /** A side's path through readings of its own, where everything behind goes by them. */
    public Optional<MeasuredPath> measured(Side side) {
        SidePath path = paths.get(side);
        boolean own = !path.linkage().isChosen() && path.readings().source() == side;
        return own ? path.readings().path() : Optional.empty();
    }

    /** A side's path in a scenario, which may have points of its own. */
    public SidePath path(Side side, int scenario) {
        return ownPath(side, scenario).orElse(paths.get(side));
    }

    /** A side's path in a scenario that has points of its own. */
    public Optional<SidePath> ownPath(Side side, int scenario) {
        return Optional.ofNullable(ownPaths.getOrDefault(side, Map.of()).get(scenario));
    }

    /** A side's path in the scenario on the shop cards, and without one in all others. */
    public SidePath shopPath(Side side) {
        return shopsOwnPath(side).orElse(paths.get(side));
    }

    /** Where the scenario on the shop cards has pick-up points of its own, its path on a side. */
    public Optional<SidePath> shopsOwnPath(Side side) {
        return ofShop(scenario -> ownPath(side, scenario));
    }

    /** A side's hub path and its sources, in all scenarios without points of their own. */
    public SidePath path(Side side) {
        return paths.get(side);
    }

    public ScenarioOutcome scenario(int scenario) {
        return scenarios.get(scenario);
    }

    public List<ScenarioOutcome> scenarios() {
        return List.copyOf(scenarios);
    }

    /** The verdict on a scenario, empty while its column is not in use. */
    public Optional<ScenarioVerdict> verdict(int scenario) {
        if (!scenarios.get(scenario).used()) {
            return Optional.empty();
        }
        return Optional.of(
                verdicts.computeIfAbsent(scenario, n -> scenarios.get(n).verdict(widthLimit())));
    }

    /** The verdict on one of its sides, likewise. */
    public Optional<Verdict> verdict(Index index) {
        return verdict(index.scenario())
                .map(both -> index.side() == Side.LEFT ? both.left() : both.right());
    }

    /** Result of a side of a scenario, when there is one. */
    public Optional<SideResult> result(Index index) {
        return scenarios.get(index.scenario()).side(index.side()).result();
    }

    /** What a side's shaft is cut from in a scenario, and how, when a blank serves. */
    public Optional<CutPlan> plan(Index index) {
        return result(index).flatMap(SideResult::plan);
    }

    /** Row, from 1, of that blank; 0 for none. */
    public int blankRow(Index index) {
        return plan(index).map(plan -> parts.blankRow(plan.row())).orElse(0);
    }

    /** A side's drawing of the scenario on the shop cards, empty while there is no path to draw. */
    public Optional<SideDrawing> drawing(Side side) {
        return drawings.computeIfAbsent(side, this::draw);
    }

    private Optional<SideDrawing> draw(Side side) {
        Optional<ScenarioOutcome> shown = ofShop(scenario -> Optional.of(scenario(scenario)));
        Optional<SideStudy> shaft = shown.flatMap(scenario -> scenario.side(side).study());
        SidePath path = shopPath(side);
        return path.corner()
                .map(
                        corner ->
                                SideDrawing.of(
                                        new SideDrawing.Shown(
                                                corner.motion(),
                                                path.linkage().origin(),
                                                shaft.map(SideStudy::flange)
                                                        .orElseGet(this::innerFlange),
                                                shown.map(ScenarioOutcome::drawnWheel)
                                                        .orElse(SideDrawing.Wheel.NONE),
                                                shaft)));
    }

    /** The typed kind of linkage, empty when there is none. */
    public Optional<LinkageKind> linkageKind() {
        return SideLinkage.kind(inputs);
    }

    /** Zero-based scenario on the shop cards; empty when its letter is none of the columns'. */
    public OptionalInt shopScenario() {
        return column(inputs.text("shop_scenario"));
    }

    /** How the length of a side of a scenario came about, when there is one. */
    public Optional<Derivation> derivation(Index index) {
        CardPrint shown = verdict(index).map(Verdict::card).orElse(CardPrint.ALL);
        return scenario(index.scenario())
                .side(index.side())
                .study()
                .flatMap(side -> Derivation.of(side, shown));
    }

    /** Result of a side of the scenario on the shop cards, when there is one. */
    public Optional<SideResult> shopResult(Side side) {
        return ofShop(scenario -> result(new Index(side, scenario, 0)));
    }

    /** What there is of the scenario on the shop cards, by its zero-based number. */
    public <T> Optional<T> ofShop(IntFunction<Optional<T>> found) {
        OptionalInt scenario = shopScenario();
        return scenario.isPresent() ? found.apply(scenario.getAsInt()) : Optional.empty();
    }

    /** Zero-based scenario of a letter; empty when no column has it. */
    OptionalInt column(String letter) {
        return IntStream.range(0, inputs.scenarios())
                .filter(scenario -> ScenarioOutcome.letter(scenario).equalsIgnoreCase(letter))
                .findFirst();
    }

    /** What is said of a side that lacks something. */
    static String words(Lack lack) {
        return lack == Lack.KINGPIN ? NO_KINGPIN : lack.words();
    }

    /** What is said of a side whose travel leaves its path. */
    static String words(PathFacts.Way way) {
        return way == PathFacts.Way.BUMP ? BUMP_BEYOND : DROOP_BEYOND;
    }

    /**
     * The vehicle, its readings and what shafts are made from, as the core has them, without
     * scenarios.
     *
     * @throws IllegalArgumentException if a figure of them is not usable
     */
    public Build build() {
        if (build == null) {
            build =
                    new Build(
                            new Vehicle(
                                    innerFlange(),
                                    hubFaceOffset(),
                                    groundClearance(),
                                    widthLimit(),
                                    kingpin(),
                                    new DrivenFlanges(
                                            drivenFlange(ShaftEnd.INNER),
                                            drivenFlange(ShaftEnd.OUTER))),
                            corner(Side.LEFT),
                            corner(Side.RIGHT),
                            new Stock(parts.blanks(), ring(), inputs.number("shop_increment")),
                            strength().loads(),
                            market(),
                            doubts.uncertainty(),
                            List.of());
        }
        return build;
    }

    /** The flange of transaxle or hub. */
    public BoltPattern drivenFlange(ShaftEnd end) {
        return new BoltPattern(
                Parts.optional(inputs.number(MatingInputs.flange(end, "circle"))),
                Parts.count(inputs.number(MatingInputs.flange(end, "bolts"))),
                Parts.optional(inputs.number(MatingInputs.flange(end, "bolt_size"))),
                Parts.optional(inputs.number(MatingInputs.flange(end, "pilot"))),
                OptionalDouble.empty());
    }

    private Market market() {
        return new Market(
                parts.joints(limits, strength()),
                parts.boots(),
                new WorkPrices(
                        Parts.optional(inputs.number("strap_price")),
                        Parts.optional(inputs.number("bump_stop_price")),
                        Parts.optional(inputs.number("transaxle_price")),
                        Parts.optional(inputs.number("hub_price")),
                        Parts.optional(inputs.number("counterbore_price")),
                        Parts.optional(inputs.number("spacer_price"))),
                spares());
    }

    /** Parts to be carried; an unreadable count is a problem. */
    Spares spares() {
        return new Spares(
                spares("spare_shafts"),
                spares("spare_joints_inner"),
                spares("spare_joints_outer"),
                spares("spare_boots_inner"),
                spares("spare_boots_outer"));
    }

    private int spares(String name) {
        return (int) Parts.orZero(inputs.number(name));
    }

    /**
     * The line about which a side's hub is steered: the one measured, else the one between its
     * linkage's ball joints, empty while neither is known.
     */
    public Optional<Kingpin> kingpin(Side side) {
        return kingpin().or(path(side).linkage()::kingpin);
    }

    /** Whether a side's line comes from its linkage's ball joints. */
    public boolean kingpinByLinkage(Side side) {
        return kingpin().isEmpty() && kingpin(side).isPresent();
    }

    /** Whether there is a line about which both hubs can be steered. */
    boolean knowsKingpins() {
        return kingpin(Side.LEFT).isPresent() && kingpin(Side.RIGHT).isPresent();
    }

    /** The line as it was measured, empty while one of its figures is not known. */
    private Optional<Kingpin> kingpin() {
        Kingpin kingpin =
                new Kingpin(
                        inputs.number("kingpin_inclination"),
                        inputs.number("kingpin_caster"),
                        inputs.number("kingpin_inward"),
                        inputs.number("kingpin_ahead"));
        double all = kingpin.inclination() + kingpin.caster() + kingpin.inward() + kingpin.ahead();
        return Double.isNaN(all) ? Optional.empty() : Optional.of(kingpin);
    }

    /**
     * How far the drive unit gives in its mounts in a scenario, mm or rad; NaN when it can't be
     * read.
     *
     * @param way one of {@link MountLoad#WAYS}
     */
    public double mountMove(int scenario, String way) {
        return push(load(scenario), way);
    }

    private MountLoad load(int scenario) {
        return MountLoad.ofWord(inputs.text("mount_load", new Index(Side.LEFT, scenario, 0)));
    }

    private double push(MountLoad load, String way) {
        return load == MountLoad.REST ? 0 : inputs.number(load.input(way));
    }

    /** Empty while a figure of it can't be read, which is said already. */
    private Optional<DriveUnitMove> push(MountLoad load) {
        double all = 0;
        for (String way : MountLoad.WAYS) {
            all += push(load, way);
        }
        return Double.isNaN(all)
                ? Optional.empty()
                : Optional.of(
                        new DriveUnitMove(
                                push(load, "forward"),
                                push(load, "left"),
                                push(load, "up"),
                                push(load, "roll")));
    }

    /** Whether a scenario's shafts are to bear all states at once. */
    public boolean wantsAllStates(int scenario) {
        return inputs.text("all_states", new Index(Side.LEFT, scenario, 0))
                .equalsIgnoreCase(StateInputs.WANTED);
    }

    /** How far the hubs are turned to the left in all states of a scenario without locks, rad. */
    public double turnOfAllStates(int scenario) {
        return locks(scenario).isPresent()
                ? 0
                : Parts.orZero(inputs.number("steer_angle", new Index(Side.LEFT, scenario, 0)));
    }

    /** The states that a scenario's shafts are to bear at once; empty for its own alone. */
    Optional<AllStates> allStates(int scenario) {
        Optional<DriveUnitMove> drive = push(MountLoad.DRIVE);
        Optional<DriveUnitMove> overrun = push(MountLoad.OVERRUN);
        if (!wantsAllStates(scenario) || drive.isEmpty() || overrun.isEmpty()) {
            return Optional.empty();
        }
        DriveUnitMove taken = push(load(scenario)).orElseThrow();
        return Optional.of(new AllStates(locks(scenario), taken, drive.get(), overrun.get()));
    }

    private Optional<AllStates.Locks> locks(int scenario) {
        Index column = new Index(Side.LEFT, scenario, 0);
        double left = inputs.number("lock_left", column);
        double right = inputs.number("lock_right", column);
        return Double.isNaN(left + right)
                ? Optional.empty()
                : Optional.of(new AllStates.Locks(left, right));
    }

    private Corner corner(Side side) {
        Corner plain = path(side).source();
        return path(side).restraints().canMove()
                ? plain.with(path(side).rows().surroundings())
                : plain;
    }

    GroundClearance groundClearance() {
        return new GroundClearance(
                Parts.optional(inputs.number("clearance_ride")),
                Parts.optional(inputs.number("clearance_tyre_diameter")));
    }

    private OptionalDouble widthLimit() {
        return Parts.optional(inputs.number("width_limit"));
    }

    OptionalDouble hubFaceOffset() {
        return Parts.optional(inputs.number("hub_face_offset"));
    }

    /** The inner flange where it was measured; the same in both sides' frames. */
    public InnerFlange innerFlange() {
        return InnerFlange.of(inputs.number("inner_tilt"), inputs.number("inner_sweep"));
    }

    /** The retaining rings and their grooves. */
    public RingSpec ring() {
        return new RingSpec(
                inputs.number("ring_thickness"),
                inputs.number("groove_width"),
                inputs.number("groove_depth"),
                inputs.number("spline_runout"));
    }

    private TapeSettings tapeSettings() {
        DegreeChoice degree =
                switch (inputs.text("fit_degree")) {
                    case "4" -> DegreeChoice.QUARTIC;
                    case "5" -> DegreeChoice.QUINTIC;
                    default -> DegreeChoice.AUTO;
                };
        return new TapeSettings(
                aboveZero(inputs.number("tape_graduation")),
                aboveZero(inputs.number("height_graduation")),
                degree,
                orUsual(
                        inputs.number("curve_allowance_quadratic"),
                        TapeSettings.USUAL_QUADRATIC_ALLOWANCE),
                orUsual(
                        inputs.number("curve_allowance_cubic"),
                        TapeSettings.USUAL_CUBIC_ALLOWANCE));
    }

    private static double aboveZero(double graduation) {
        return graduation > 0 ? graduation : 1;
    }

    /** An unreadable setting is a problem already; computing goes on to find the others. */
    private static double orUsual(double number, double usual) {
        return number >= 0 ? number : usual;
    }
}
