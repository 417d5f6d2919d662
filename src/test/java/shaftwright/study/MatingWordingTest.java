package shaftwright.study;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import shaftwright.units.LengthUnit;

class MatingWordingTest {
    /** Who reads "mates" learns how near that is. */
    @Test
    void saysWithinWhatMeasuresCountAsTheSame() {
        assertThat(MatingWording.sameWithin(LengthUnit.MILLIMETRE))
                .isEqualTo(
                        "bolt circle 0.500 mm, bolt size 0.030 mm, pilot diameter 0.200 mm,"
                                + " module 0.2 %, pressure angle 0.1° (own limits); all else only"
                                + " when equal");
        assertThat(MatingWording.sameWithin(LengthUnit.INCH)).contains("bolt circle 0.0197 in");
    }
}
