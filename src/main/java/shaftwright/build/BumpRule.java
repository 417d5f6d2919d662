package shaftwright.build;

import java.util.OptionalDouble;
import shaftwright.units.Require;

/** What ends a wheel's travel upward. */
public sealed interface BumpRule {
    /**
     * A stop at a travel of its own.
     *
     * @param travel above ride, mm
     * @param clearance wanted under the vehicle at full bump all the same, mm; empty when none is
     *     asked for
     */
    record Stop(double travel, OptionalDouble clearance) implements BumpRule {
        public Stop {
            Require.finite("bump travel", travel);
            if (clearance.isPresent()) {
                Require.finite("clearance wanted", clearance.getAsDouble());
            }
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

        @Override
        public OptionalDouble clearance() {
            return OptionalDouble.of(left);
        }
    }

    /** Clearance wanted under the vehicle at full bump, mm; empty when none is asked for. */
    OptionalDouble clearance();
}
