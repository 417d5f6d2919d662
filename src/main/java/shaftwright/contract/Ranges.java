package shaftwright.contract;

import shaftwright.contract.Input.Range;

/** Allowed ranges that many inputs share, mm, degrees or N·m. */
final class Ranges {
    static final Range SIZE = new Range(0.01, 5_000);
    static final Range OFFSET = new Range(-2_000, 2_000);
    static final Range NOT_NEGATIVE = new Range(0, 5_000);
    static final Range ANY_ANGLE = new Range(-45, 45);
    static final Range PLACE = new Range(-20_000, 20_000);
    static final Range AHEAD = new Range(-3_500, 3_500);
    static final Range OUTWARD = new Range(0, 1_500);
    static final Range TORQUE = new Range(0.1, 1e5);
    static final Range TRAVEL = new Range(1, 1_000);

    private Ranges() {}
}
