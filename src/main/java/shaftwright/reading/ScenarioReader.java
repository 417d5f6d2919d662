package shaftwright.reading;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import shaftwright.book.Problem;
import shaftwright.build.BumpRule;
import shaftwright.build.Drive;
import shaftwright.build.DriveUnitMove;
import shaftwright.build.Margins;
import shaftwright.build.OwnCosts;
import shaftwright.build.Scenario;
import shaftwright.build.Side;
import shaftwright.build.Wheel;
import shaftwright.build.WheelTravel;
import shaftwright.contract.Contract;
import shaftwright.contract.Index;
import shaftwright.contract.InputKind;
import shaftwright.contract.StickInputs;
import shaftwright.joint.MountedJoint;
import shaftwright.reading.ScenarioOutcome.Picks;
import shaftwright.reading.ScenarioOutcome.WheelOutcome;
import shaftwright.shaft.ShaftEnd;
import shaftwright.study.HubCourse;
import shaftwright.study.PartPrices;
import shaftwright.study.PathStudy;
import shaftwright.study.Price;
import shaftwright.study.ScenarioStudy;
import shaftwright.study.ScenarioVariants;
import shaftwright.study.SetCost;
import shaftwright.study.SideStudy;
import shaftwright.study.StrengthStudy;
import shaftwright.study.WheelFigures;
import shaftwright.tyre.TyreSize;
import shaftwright.tyre.UnreadableTyreSizeException;
import shaftwright.units.ContradictionException;

/** Turns one scenario column into a set-up for each side, and computes it. */
public final class ScenarioReader {
    private final Sizing sizing;
    private final InputValues inputs;
    private final Parts parts;
    private final List<Problem> problems;

    ScenarioReader(Sizing sizing, List<Problem> problems) {
        this.sizing = sizing;
        inputs = sizing.inputs();
        parts = sizing.parts();
        this.problems = problems;
    }

    ScenarioOutcome of(int scenario) {
        boolean used = !text("scenario_name", scenario).isEmpty();
        Picks picks = picks(scenario);
        Optional<TyreSize> tyre = tyreSize(scenario);
        Wheel wheel = wheel(scenario, tyre);
        String trouble = used ? trouble(scenario, picks) : "";
        String misread = used ? sizing.misread().in(scenario) : "";
        trouble = misread.isEmpty() ? trouble : misread;
        SideOutcome left = side(scenario, Side.LEFT, used, trouble, picks, wheel);
        SideOutcome right = side(scenario, Side.RIGHT, used, trouble, picks, wheel);
        return new ScenarioOutcome(
                scenario,
                used,
                trouble,
                picks,
                wheelOutcome(tyre, wheel, left, right),
                left,
                right,
                cost(scenario, used, picks, left, right),
                () -> strength(scenario, picks, wheel, left, right));
    }

    /**
     * What comes of a column when something of it is changed; empty while its joints, its travel or
     * a hub's path is not known, or its sizes contradict each other.
     */
    Optional<ScenarioVariants> variants(int scenario) {
        Picks picks = picks(scenario);
        Optional<HubCourse> left = sizing.path(Side.LEFT, scenario).course();
        Optional<HubCourse> right = sizing.path(Side.RIGHT, scenario).course();
        if (left.isEmpty() || right.isEmpty() || !isComplete(scenario, picks)) {
            return Optional.empty();
        }
        try {
            return Optional.of(
                    ScenarioVariants.of(
                            sizing.build(),
                            scenario(scenario, picks, wheel(scenario, tyreSize(scenario))),
                            left.get(),
                            right.get()));
        } catch (ContradictionException e) {
            return Optional.empty();
        }
    }

    private boolean isComplete(int scenario, Picks picks) {
        return !text("scenario_name", scenario).isEmpty()
                && sizing.misread().in(scenario).isEmpty()
                && partsTrouble(scenario, picks).isEmpty()
                && travelTrouble(scenario).isEmpty();
    }

    private StrengthStudy strength(
            int scenario, Picks picks, Wheel wheel, SideOutcome left, SideOutcome right) {
        return StrengthStudy.of(
                sizing.strength().loads(),
                drive(scenario, picks),
                wheel.tyre(),
                left.study(),
                right.study());
    }

    private Drive drive(int scenario, Picks picks) {
        return sizing.strength().drive(scenario, picks.innerJoint(), picks.outerJoint());
    }

    private Picks picks(int scenario) {
        String blank = text("blank_choice", scenario);
        return new Picks(
                parts.row("joint_name", text("joint_inner", scenario)),
                parts.row("joint_name", text("joint_outer", scenario)),
                parts.row("boot_name", text("boot_inner", scenario)),
                parts.row("boot_name", text("boot_outer", scenario)),
                blank.equalsIgnoreCase("auto") ? 0 : parts.row("blank_name", blank));
    }

    /** The tyre's size; one that can't be read is said already. */
    private Optional<TyreSize> tyreSize(int scenario) {
        String size = text("tyre_size", scenario);
        try {
            return size.isEmpty() ? Optional.empty() : Optional.of(TyreSize.parse(size));
        } catch (UnreadableTyreSizeException e) {
            return Optional.empty();
        }
    }

    private Wheel wheel(int scenario, Optional<TyreSize> size) {
        Wheel wheel =
                Wheel.of(
                        size,
                        Parts.optional(number("tyre_measured", scenario)),
                        Parts.optional(number("tyre_width_measured", scenario)),
                        Parts.orZero(number("wheel_offset", scenario)),
                        Parts.orZero(number("wheel_spacer", scenario)));
        if (wheel.diameter().isEmpty() && size.isPresent()) {
            askForDiameter(scenario, text("tyre_size", scenario));
        }
        return wheel;
    }

    private void askForDiameter(int scenario, String size) {
        problems.add(
                Problem.warning(
                        inputs.place("tyre_measured", new Index(Side.LEFT, scenario, 0)),
                        Contract.input("tyre_measured").label()
                                + ", scenario "
                                + ScenarioOutcome.letter(scenario),
                        "nothing",
                        "the diameter by a tape: the size \"" + size + "\" states none"));
    }

    private String trouble(int scenario, Picks picks) {
        String ofParts = partsTrouble(scenario, picks);
        if (!ofParts.isEmpty()) {
            return ofParts;
        }
        String ofStates = StatesCheck.trouble(sizing, scenario);
        if (!ofStates.isEmpty()) {
            return ofStates;
        }
        return number("steer_angle", scenario) != 0 && !sizing.knowsKingpins()
                ? Sizing.NO_KINGPIN
                : travelTrouble(scenario);
    }

    /** What is missing, or wrong with a part; the latter is a problem too. */
    private String partsTrouble(int scenario, Picks picks) {
        String joint = jointTrouble(scenario, ShaftEnd.INNER, picks.innerJoint());
        String other = jointTrouble(scenario, ShaftEnd.OUTER, picks.outerJoint());
        part(scenario, "boot_inner", picks.innerBoot(), "boot table");
        part(scenario, "boot_outer", picks.outerBoot(), "boot table");
        if (!text("blank_choice", scenario).equalsIgnoreCase("auto")) {
            part(scenario, "blank_choice", picks.blank(), "blank table, or auto");
            blankWithoutSizes(scenario, picks.blank());
        }
        counterbore(scenario, ShaftEnd.INNER, picks.innerJoint());
        counterbore(scenario, ShaftEnd.OUTER, picks.outerJoint());
        return joint.isEmpty() ? other : joint;
    }

    private String travelTrouble(int scenario) {
        if (Double.isNaN(number("droop_limit", scenario))) {
            return Sizing.NO_DROOP;
        }
        if (byClearance(scenario)) {
            double needed = inputs.number("clearance_ride") + number("clearance_wanted", scenario);
            return Double.isNaN(needed) ? Sizing.NO_CLEARANCE : "";
        }
        return Double.isNaN(number("bump_limit", scenario)) ? Sizing.NO_BUMP : "";
    }

    /** Not an error: the length can be said all the same, only not what it is cut from. */
    private void blankWithoutSizes(int scenario, int row) {
        if (row > 0 && !parts.blankUsed(row - 1)) {
            problems.add(
                    Problem.warning(
                            inputs.place("blank_choice", new Index(Side.LEFT, scenario, 0)),
                            Contract.input("blank_choice").label()
                                    + ", scenario "
                                    + ScenarioOutcome.letter(scenario),
                            "a blank whose row lacks a size",
                            "length and both spline lengths in its row"));
        }
    }

    private void counterbore(int scenario, ShaftEnd end, int row) {
        double race = row == 0 ? Double.NaN : 2 * parts.number("joint_race_half_width", row - 1);
        String name = "counterbore_" + end.word();
        if (number(name, scenario) > race) {
            error(
                    scenario,
                    name,
                    shown(name, scenario),
                    "less than the race is wide: twice the joint's inner race half width, "
                            + inputs.shownLength(race));
        }
    }

    private String shown(String name, int scenario) {
        return "\"" + text(name, scenario) + "\"";
    }

    private String jointTrouble(int scenario, ShaftEnd end, int row) {
        String pick = "joint_" + end.word();
        if (text(pick, scenario).isEmpty()) {
            return Sizing.noJoint(end);
        }
        part(scenario, pick, row, "joint table");
        if (row == 0) {
            return "the " + end.word() + " joint is not in the joint table";
        }
        if (!parts.jointComplete(row)) {
            lackingSizes(scenario, end, row);
            return JointSize.lacks(end) + JointSize.said(sizing, row);
        }
        if (!sizing.limits().has(row)) {
            if (inputs.unreadable("joint_plunge", new Index(Side.LEFT, 0, row - 1))) {
                return JointSize.lacks(end) + JointSize.said(sizing, row);
            }
            error(
                    scenario,
                    pick,
                    "\"" + text(pick, scenario) + "\", a joint with neither plunge nor bench rows",
                    "a joint whose travel is known: type its straight plunge, or rows in the bench"
                            + " table");
            return JointSize.lacks(end) + JointSize.said(sizing, row);
        }
        return "";
    }

    /** Names the empty cells themselves; those that hold something unreadable are said already. */
    private void lackingSizes(int scenario, ShaftEnd end, int row) {
        for (JointSize size : JointSize.TYPED) {
            String column = size.column();
            Index index = new Index(Side.LEFT, 0, row - 1);
            if (Double.isNaN(inputs.number(column, index)) && !inputs.unreadable(column, index)) {
                addOnce(
                        Problem.error(
                                inputs.place(column, index),
                                Contract.input(column).label() + ", row " + row,
                                "nothing",
                                (Contract.input(column).kind() == InputKind.ANGLE
                                                ? "an angle"
                                                : "a length")
                                        + "; scenario "
                                        + ScenarioOutcome.letter(scenario)
                                        + " has this joint at its "
                                        + end.word()
                                        + " end"));
            }
        }
    }

    private void addOnce(Problem problem) {
        for (Problem known : problems) {
            if (known.place().equals(problem.place()) && known.found().equals(problem.found())) {
                return;
            }
        }
        problems.add(problem);
    }

    private void part(int scenario, String pick, int row, String table) {
        if (row == 0 && !text(pick, scenario).isEmpty()) {
            error(scenario, pick, "\"" + text(pick, scenario) + "\"", "a name in the " + table);
        }
    }

    private boolean byClearance(int scenario) {
        return text("bump_rule", scenario).equalsIgnoreCase("clearance");
    }

    private SideOutcome side(
            int scenario, Side side, boolean used, String trouble, Picks picks, Wheel wheel) {
        if (!used) {
            return SideOutcome.lacking(Sizing.UNUSED, Optional.empty());
        }
        SidePath source = sizing.path(side, scenario);
        Optional<PathStudy> path = source.study();
        if (!trouble.isEmpty() || path.isEmpty()) {
            String none = source.linkage().isChosen() ? Sizing.NO_LINKAGE : Sizing.NO_READINGS;
            String why = trouble.isEmpty() ? none : trouble;
            return SideOutcome.lacking(why, path);
        }
        try {
            SideStudy study =
                    SideStudy.of(
                            sizing.build(),
                            scenario(scenario, picks, wheel),
                            side,
                            path.get(),
                            source.corner().orElseThrow());
            return new SideOutcome(study, rows(picks), source);
        } catch (ContradictionException e) {
            contradiction(scenario, side, e.getMessage());
            return SideOutcome.lacking("its sizes contradict each other", path);
        }
    }

    /** Only when nothing else was said: a cell that was refused leads here too. */
    private void contradiction(int scenario, Side side, String reason) {
        for (Problem problem : problems) {
            if (problem.isError()) {
                return;
            }
        }
        problems.add(
                Problem.error(
                        inputs.place("scenario_name", new Index(side, scenario, 0)),
                        "scenario " + ScenarioOutcome.letter(scenario) + ", " + side.word(),
                        "sizes that contradict each other (" + reason + ")",
                        "sizes of one possible shaft; look at this scenario's shifts and spacers"
                                + " and at its joints' rows"));
    }

    private SideOutcome.Rows rows(Picks picks) {
        return new SideOutcome.Rows(
                picks.innerJoint(),
                picks.outerJoint(),
                firstAngle(picks.innerJoint()),
                firstAngle(picks.outerJoint()));
    }

    /** The column as the core has it. */
    private Scenario scenario(int scenario, Picks picks, Wheel wheel) {
        Scenario.Builder built =
                Scenario.named(text("scenario_name", scenario))
                        .joints(
                                mounted(
                                        scenario,
                                        ShaftEnd.INNER,
                                        picks.innerJoint(),
                                        picks.innerBoot()),
                                mounted(
                                        scenario,
                                        ShaftEnd.OUTER,
                                        picks.outerJoint(),
                                        picks.outerBoot()))
                        .travel(new WheelTravel(number("droop_limit", scenario), bump(scenario)))
                        .margins(
                                new Margins(
                                        number("margin_inward", scenario),
                                        number("margin_outward", scenario)))
                        .bias(number("length_bias", scenario))
                        .hubShift(number("hub_shift", scenario))
                        .driveUnit(driveUnit(scenario))
                        .steerAngle(number("steer_angle", scenario))
                        .allStates(sizing.allStates(scenario))
                        .wheel(wheel)
                        .drive(drive(scenario, picks))
                        .costs(ownCosts(scenario));
        for (Side side : Side.values()) {
            sizing.ownPath(side, scenario)
                    .flatMap(own -> own.linkage().atRide())
                    .ifPresent(linkage -> built.linkage(side, linkage));
        }
        for (Side side : Side.values()) {
            sizing.mockUp(side)
                    .use(scenario, isCorrected(scenario))
                    .ifPresent(use -> built.mockUp(side, use));
        }
        if (picks.blank() > 0) {
            built.onlyBlank(parts.blankListed(picks.blank() - 1));
        }
        return built.build();
    }

    private boolean isCorrected(int scenario) {
        return text("stick_corrects", scenario).equalsIgnoreCase(StickInputs.YES);
    }

    private BumpRule bump(int scenario) {
        return byClearance(scenario)
                ? new BumpRule.Clearance(number("clearance_wanted", scenario))
                : new BumpRule.Stop(
                        number("bump_limit", scenario),
                        Parts.optional(number("clearance_wanted", scenario)));
    }

    /** The transaxle's own move and its give in the mounts. */
    private DriveUnitMove driveUnit(int scenario) {
        return new DriveUnitMove(
                number("transaxle_forward", scenario) + sizing.mountMove(scenario, "forward"),
                number("transaxle_left", scenario) + sizing.mountMove(scenario, "left"),
                number("transaxle_up", scenario) + sizing.mountMove(scenario, "up"),
                sizing.mountMove(scenario, "roll"));
    }

    private MountedJoint mounted(int scenario, ShaftEnd end, int jointRow, int bootRow) {
        return new MountedJoint(
                parts.joint(jointRow, sizing.limits())
                        .behindSpacer(number("joint_spacer_" + end.word(), scenario)),
                number("cup_spacer_" + end.word(), scenario),
                number("counterbore_" + end.word(), scenario),
                number("stub_" + end.word(), scenario),
                inputs.number("shaft_end_diameter_" + end.word()),
                parts.boot(bootRow));
    }

    private double firstAngle(int row) {
        int i = 0;
        while (sizing.limits().joint(i) != row) {
            i++;
        }
        return sizing.limits().angle(i);
    }

    private WheelOutcome wheelOutcome(
            Optional<TyreSize> size, Wheel wheel, SideOutcome left, SideOutcome right) {
        OptionalDouble track =
                left.isSetUp() && right.isSetUp()
                        ? ScenarioStudy.trackWidth(
                                wheel, left.study().orElseThrow(), right.study().orElseThrow())
                        : OptionalDouble.empty();
        return new WheelOutcome(
                size.map(TyreSize::freeDiameter).orElse(OptionalDouble.empty()).orElse(Double.NaN),
                size.map(TyreSize::sectionWidth).orElse(Double.NaN),
                wheel,
                WheelFigures.of(sizing.groundClearance(), sizing.hubFaceOffset(), wheel),
                left.study().map(SideStudy::clearanceAtBump).orElse(OptionalDouble.empty()),
                track,
                ScenarioStudy.overallWidth(wheel, track));
    }

    private SetCost cost(
            int scenario, boolean used, Picks picks, SideOutcome left, SideOutcome right) {
        if (!used) {
            return SetCost.NONE;
        }
        OwnCosts own = ownCosts(scenario);
        return SetCost.of(
                SetCost.shafts(own.shaftPair(), left.result(), right.result()),
                prices(picks.innerJoint(), picks.innerBoot()),
                prices(picks.outerJoint(), picks.outerBoot()),
                own.other(),
                sizing.spares());
    }

    private OwnCosts ownCosts(int scenario) {
        return new OwnCosts(
                Parts.optional(number("shaft_pair_price", scenario)),
                Parts.orZero(number("other_cost", scenario)));
    }

    /** A joint's row may lack a size and still have a price. */
    private PartPrices prices(int jointRow, int bootRow) {
        return new PartPrices(
                jointRow == 0 ? Optional.empty() : Optional.of(price("joint_price", jointRow)),
                bootRow == 0 ? Price.of(0) : price("boot_price", bootRow));
    }

    private Price price(String column, int row) {
        return Price.typed(Parts.optional(parts.number(column, row - 1)));
    }

    private double number(String name, int scenario) {
        return inputs.number(name, new Index(Side.LEFT, scenario, 0));
    }

    private String text(String name, int scenario) {
        return inputs.text(name, new Index(Side.LEFT, scenario, 0));
    }

    private void error(int scenario, String name, String found, String expected) {
        problems.add(
                Problem.error(
                        inputs.place(name, new Index(Side.LEFT, scenario, 0)),
                        Contract.input(name).label()
                                + ", scenario "
                                + ScenarioOutcome.letter(scenario),
                        found,
                        expected));
    }
}
