package shaftwright.build;

import shaftwright.units.Require;

/** What ends a wheel's travel upward. */
public sealed interface BumpRule {
    /**
     * A stop at a travel of its own.
     *
     * @param travel above ride, mm
     */
    record Stop(double travel) implements BumpRule {
        public Stop {
            Require.finite("bump travel", travel);
        }
    }

    /**
     * The ground: the travel that leaves a clearance under the vehicle.
     *
     * @param left clearance wanted at full bump, mm
     */
    record Clearance(double left) implements BumpRule {
        public Clearance {
            Require.finite("clearance wanted", left);
        }
    }
}
