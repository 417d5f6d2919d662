package shaftwright.study;

import java.util.Optional;
import shaftwright.joint.MountedJoint;

/**
 * What the parts at one end of a shaft cost.
 *
 * @param joint one of them; empty while none is chosen
 * @param boot one kit
 */
public record PartPrices(Optional<Price> joint, Price boot) {
    static PartPrices of(MountedJoint mounted) {
        return new PartPrices(
                Optional.of(Price.typed(mounted.joint().price())),
                Price.typed(mounted.boot().price()));
    }

    /** A joint that was not chosen is lacking. */
    Price jointPrice() {
        return joint.orElse(Price.lacking("no joint"));
    }
}
