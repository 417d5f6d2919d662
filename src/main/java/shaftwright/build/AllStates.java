package shaftwright.build;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import shaftwright.units.Require;

/**
 * What a scenario's shafts are to bear at once: hubs steered from lock to lock, and the drive unit
 * at rest, under drive and under overrun in its mounts.
 *
 * @param locks how far the hubs are steered; empty where they stay as the scenario has them
 * @param taken how the scenario's own {@link Scenario#driveUnit() drive unit} is pushed in its
 *     mounts, which its move includes
 * @param drive how it is pushed under drive
 * @param overrun how it is pushed under overrun
 */
public record AllStates(
        Optional<Locks> locks, DriveUnitMove taken, DriveUnitMove drive, DriveUnitMove overrun) {
    /** Steps from straight ahead to a lock. */
    public static final int STEPS_TO_LOCK = 4;

    /**
     * Full locks, both hubs alike.
     *
     * @param left turn to the left, rad, 0 or more
     * @param right turn to the left at full right lock, rad, 0 or less
     */
    public record Locks(double left, double right) {
        public Locks {
            Require.within("left lock", left, 0, Math.PI / 2);
            Require.within("right lock", right, -Math.PI / 2, 0);
        }

        /** Turns to the left, rad: four even steps from full right lock to straight, four on. */
        List<Double> turns() {
            List<Double> turns = new ArrayList<>();
            for (int step = -STEPS_TO_LOCK; step <= STEPS_TO_LOCK; step++) {
                double lock = step < 0 ? -right : left;
                double turn = lock * step / STEPS_TO_LOCK;
                if (turns.isEmpty() || turns.get(turns.size() - 1) != turn) {
                    turns.add(turn);
                }
            }
            return turns;
        }
    }

    /** What pushes the drive unit. */
    public enum Load {
        REST,
        DRIVE,
        OVERRUN
    }

    /**
     * One of the states.
     *
     * @param turn both hubs to the left, rad
     * @param load what pushes the drive unit
     * @param driveUnit where that puts it
     */
    public record State(double turn, Load load, DriveUnitMove driveUnit) {}

    /** Whether the hubs' turn makes a difference between the states. */
    public boolean steers() {
        return locks.isPresent() && locks.get().turns().size() > 1;
    }

    /** Whether the drive unit gives in its mounts. */
    public boolean gives() {
        return !drive.equals(DriveUnitMove.NONE) || !overrun.equals(DriveUnitMove.NONE);
    }

    /** Whether any state rolls the drive unit. */
    public boolean rolls() {
        return drive.roll() != 0 || overrun.roll() != 0;
    }

    /**
     * The states: at rest first, from full right lock to full left lock, and the same under drive
     * and overrun. A drive unit that does not give has only the one at rest.
     *
     * @param scenario what is the same in all of them
     */
    List<State> of(Scenario scenario) {
        DriveUnitMove rest = scenario.driveUnit().less(taken);
        List<Double> turns = locks.map(Locks::turns).orElse(List.of(scenario.steerAngle()));
        List<State> states = new ArrayList<>();
        for (Load load : gives() ? Load.values() : new Load[] {Load.REST}) {
            DriveUnitMove place = rest.plus(push(load));
            for (double turn : turns) {
                states.add(new State(turn, load, place));
            }
        }
        return states;
    }

    private DriveUnitMove push(Load load) {
        return switch (load) {
            case REST -> DriveUnitMove.NONE;
            case DRIVE -> drive;
            case OVERRUN -> overrun;
        };
    }
}
