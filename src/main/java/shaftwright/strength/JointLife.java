package shaftwright.strength;

import shaftwright.units.Require;

/**
 * Life of a ball joint under steady torque, as an index to compare joints and angles by, not as a
 * promise. Seherr-Thoss, Schmelz, Aucktor, <i>Universal Joints and Driveshafts</i>, section on ball
 * joints; from memory, and continuous at 1000 rpm.
 */
public final class JointLife {
    /** Hours times rpm to the power of {@link #SLOW_EXPONENT}, at slow speed. */
    public static final int SLOW_CONSTANT = 25_339;

    public static final double SLOW_EXPONENT = 0.577;

    /** Hours times rpm, above {@link #SLOW_TO}. */
    public static final int FAST_CONSTANT = 470_756;

    /** Highest slow speed, rpm. */
    public static final int SLOW_TO = 1000;

    private JointLife() {}

    /** Share of the straight joint's capacity left at an angle: {@code (1 - sin β) cos²β}. */
    public static double angleFactor(double angle) {
        Require.within("joint angle", angle, 0, Math.PI / 2);
        double cosine = Math.cos(angle);
        return (1 - Math.sin(angle)) * cosine * cosine;
    }

    /**
     * Hours of life: {@code 25339/n^0.577 (A M_d/M)³} up to 1000 rpm, {@code 470756/n (A M_d/M)³}
     * above.
     *
     * @param capacity dynamic torque capacity of the joint, straight, N·m ({@code M_d})
     * @param torque that it runs with, N·m ({@code M})
     * @param angle that it runs at, rad
     * @param speed rpm
     */
    public static double hours(double capacity, double torque, double angle, double speed) {
        Require.positive("speed", speed);
        double straight =
                speed <= SLOW_TO
                        ? SLOW_CONSTANT / Math.pow(speed, SLOW_EXPONENT)
                        : FAST_CONSTANT / speed;
        return hoursFrom(straight, capacity, torque, angle);
    }

    /**
     * Hours of life from those of a straight joint that runs at its capacity: {@code L (A M_d/M)³}.
     *
     * @param straight hours ({@code L})
     * @param capacity dynamic torque capacity of the joint, straight, N·m ({@code M_d})
     * @param torque that it runs with, N·m ({@code M})
     * @param angle that it runs at, rad
     */
    public static double hoursFrom(double straight, double capacity, double torque, double angle) {
        Require.positive("dynamic capacity", capacity);
        Require.positive("torque", torque);
        double ratio = angleFactor(angle) * capacity / torque;
        return straight * ratio * ratio * ratio;
    }

    /**
     * The same where the angle differs over the running time: {@code L (M_d/M)³ / Σ(q/A³)}.
     *
     * @param straight hours ({@code L})
     * @param capacity dynamic torque capacity of the joint, straight, N·m ({@code M_d})
     * @param torque that it runs with, N·m ({@code M})
     * @param use of life over that of a straight joint, by {@link TravelShares#use}
     */
    public static double hoursAt(double straight, double capacity, double torque, double use) {
        Require.positive("use of life", use);
        return hoursFrom(straight, capacity, torque, 0) / use;
    }

    /**
     * Speed times angle, rpm times degrees: what heats a joint ({@code n β}).
     *
     * @param speed rpm
     * @param angle rad
     */
    public static double speedAngle(double speed, double angle) {
        Require.notNegative("speed", speed);
        Require.within("joint angle", angle, 0, Math.PI / 2);
        return speed * Math.toDegrees(angle);
    }

    /**
     * Life under a mix of duties, each using up its share (Palmgren, Miner): {@code Σq / Σ(q/L)}.
     *
     * @param shares of running time, at any scale
     * @param hours life under each duty alone
     */
    public static double mixed(double[] shares, double[] hours) {
        if (shares.length != hours.length || shares.length == 0) {
            throw new IllegalArgumentException(
                    "one life per share; have " + shares.length + " and " + hours.length);
        }
        double whole = 0;
        double used = 0;
        for (int i = 0; i < shares.length; i++) {
            whole += Require.notNegative("share of time", shares[i]);
            used += shares[i] / Require.positive("life", hours[i]);
        }
        Require.positive("sum of shares", whole);
        return whole / used;
    }
}
