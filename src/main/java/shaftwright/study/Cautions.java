package shaftwright.study;

import java.util.List;

/** What is said wherever a length is shown: dangers of the work, and who decides. */
public final class Cautions {
    /** Beside every verdict. */
    public static final String LINE =
            "Caution: a sizing aid, not approval. Local rules, event rules and licensed or certified"
                    + " practice decide what may be driven. Vehicle on stands, stored energy of springs and"
                    + " gas dampers released, hands clear whenever shafts can turn.";

    /** In full, for the first sheet. */
    public static final List<String> ALL =
            List.of(
                    "Support the vehicle on stands, never on a jack alone; chock the wheels that stay on"
                            + " the ground.",
                    "Springs and gas dampers store energy: release them as their maker says, and take"
                            + " springs out before you cycle the suspension by hand.",
                    "A drive unit pried aside in its mounts is supported first. Keep hands clear whenever"
                            + " shafts can turn.",
                    "Eye, hand and face protection when hardened steel is cut; keep sparks and grinding"
                            + " dust away. At a turning chuck: no gloves, no key left in it.",
                    "Check bolt torques after the first run, and clearances at both ends of the travel.",
                    "The result is a sizing aid, not approval. Local rules, event rules and licensed or"
                            + " certified practice decide what may be driven.");

    /** Before measuring. */
    public static final String MEASURING =
            "Wheels on the ground chocked. Springs and gas dampers store energy: release them as their"
                    + " maker says. Support the drive unit before you pry it aside.";

    /** At the bench. */
    public static final String BENCH =
            "Stands under the vehicle. Eyes, hands and face protected, dust and sparks kept away; no"
                    + " gloves or key at a turning chuck; hands clear whenever shafts can turn. A sizing"
                    + " aid, not approval: local rules, event rules and licensed practice decide what may"
                    + " be driven.";

    /** Beside factors in fatigue. */
    public static final String FATIGUE =
            "Fatigue factors compare variants; they promise no life. Torques are the duty rows', without"
                    + " the shock factor: both ways where a row says so or brakes are inboard, else on and"
                    + " off. Kfs counts on the alternating stress, for a hardened blank on the mean too.";

    /** Beside the joints' life index. */
    public static final String LIFE =
            "The life index compares joints and angles; it promises no hours. Torque is without the shock"
                    + " factor, time shared over full bump, ride and full droop as typed, else all at"
                    + " ride.";

    /** Beside speed times angle. */
    public static final String SPEED_ANGLE =
            "Rpm times degrees is told at ride height and top speed, and held against the joint maker's"
                    + " limit: it says nothing of heat on a long climb.";

    /** Beside torque of inboard brakes and of reverse gear. */
    public static final String OTHER_WAY =
            "Inboard brakes and reverse gear count each on its own, with the shock factor: nobody brakes"
                    + " under full drive.";

    private Cautions() {}
}
