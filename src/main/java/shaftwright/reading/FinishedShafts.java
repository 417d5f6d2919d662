package shaftwright.reading;

import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import shaftwright.book.Problem;
import shaftwright.build.FinishedShaft;
import shaftwright.build.FinishedShaft.Assembled;
import shaftwright.build.Side;
import shaftwright.build.WheelPlace;
import shaftwright.contract.Contract;
import shaftwright.contract.Index;
import shaftwright.contract.InputKind;
import shaftwright.shaft.ShaftEnd;
import shaftwright.study.AsBuilt;

/** Reads what was measured of finished shafts, and says by cell what is not as expected. */
public final class FinishedShafts {
    private final InputValues inputs;
    private final Side side;

    private FinishedShafts(InputValues inputs, Side side) {
        this.inputs = inputs;
        this.side = side;
    }

    /** A side's shaft beside the one on the shop card; empty when the cards are empty. */
    public static Optional<AsBuilt> of(Sizing sizing, Side side) {
        return sizing.shopResult(side)
                .map(
                        planned ->
                                new AsBuilt(
                                        planned,
                                        new FinishedShafts(sizing.inputs(), side).read(),
                                        sizing.readings(side).measured().settings()));
    }

    private FinishedShaft read() {
        Map<WheelPlace, Assembled> assembled = new EnumMap<>(WheelPlace.class);
        for (WheelPlace place : WheelPlace.values()) {
            assembled.put(
                    place,
                    new Assembled(
                            Parts.optional(measured("built_play", place)),
                            Parts.optional(measured("built_angle_inner", place)),
                            Parts.optional(measured("built_angle_outer", place))));
        }
        return new FinishedShaft(
                Parts.optional(inputs.number("built_e", side, 0)),
                Parts.optional(inputs.number("built_k", side, 0)),
                inputs.number("built_gauge"),
                assembled);
    }

    private double measured(String name, WheelPlace place) {
        return inputs.number(name, side, place.row());
    }

    /** Says what was measured other than expected by more than the doubt. */
    static void check(Sizing sizing, List<Problem> problems) {
        for (Side side : Side.values()) {
            of(sizing, side)
                    .ifPresent(
                            built ->
                                    new FinishedShafts(sizing.inputs(), side)
                                            .check(built, problems));
        }
        ServiceLog.of(sizing.inputs()).check(sizing.inputs(), problems);
    }

    private void check(AsBuilt built, List<Problem> problems) {
        if (built.measured().isMeasured() && (built.slackIn() < 0 || built.slackOut() < 0)) {
            boolean byK = built.measured().clipToClip().isPresent();
            String name = byK ? "built_k" : "built_e";
            problems.add(
                    Problem.warning(
                            inputs.place(name, new Index(side, 0, 0)),
                            Contract.input(name).label() + ", " + side.word(),
                            inputs.shownLength(inputs.number(name, side, 0)),
                            "a shaft that neither bottoms nor pulls out; this one "
                                    + (built.slackIn() < 0
                                            ? "bottoms by " + inputs.shownLength(-built.slackIn())
                                            : "pulls out by "
                                                    + inputs.shownLength(-built.slackOut()))));
        }
        for (WheelPlace place : WheelPlace.values()) {
            built.playCompared(place).ifPresent(said -> say("built_play", place, said, problems));
            for (ShaftEnd end : ShaftEnd.values()) {
                String angle = "built_angle_" + end.word();
                built.angleCompared(place, end)
                        .ifPresent(said -> say(angle, place, said, problems));
            }
        }
    }

    private void say(
            String name, WheelPlace place, AsBuilt.Compared compared, List<Problem> problems) {
        if (compared.isBeyond()) {
            problems.add(
                    Problem.warning(
                            inputs.place(name, new Index(side, 0, place.row())),
                            Contract.input(name).label()
                                    + " at "
                                    + place.words()
                                    + ", "
                                    + side.word(),
                            shown(name, compared.measured()),
                            shown(name, compared.expected())
                                    + " within a doubt of "
                                    + shown(name, compared.doubt())));
        }
    }

    private String shown(String name, double value) {
        return Contract.input(name).kind() == InputKind.LENGTH
                ? inputs.shownLength(value)
                : Math.rint(Math.toDegrees(value) * 10) / 10 + "°";
    }
}
