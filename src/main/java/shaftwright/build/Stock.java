package shaftwright.build;

import java.util.List;
import shaftwright.shaft.Blank;
import shaftwright.shaft.RingSpec;
import shaftwright.units.Require;

/**
 * What shafts are made from and how finely.
 *
 * @param blanks that can be had, possibly none
 * @param ring the retaining rings and their grooves
 * @param increment what the shop cuts overall lengths to, mm; 0 for no rounding
 */
public record Stock(List<Blank> blanks, RingSpec ring, double increment) {
    public Stock {
        blanks = List.copyOf(blanks);
        Require.notNegative("shop increment", increment);
    }
}
