package shaftwright.study;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;

/** Sums by hand: invented prices. */
class PriceTest {
    private static final Price UNKNOWN = Price.typed(OptionalDouble.empty());

    @Test
    void aSumWithAMissingPriceIsNotKnown() {
        assertThat(Price.of(7).plus(Price.of(5))).isEqualTo(Price.of(12));
        assertThat(Price.of(7).plus(UNKNOWN).words()).isEqualTo("no price");
        assertThat(UNKNOWN.plus(Price.of(7)).words()).isEqualTo("no price");
    }

    @Test
    void aDifferenceFromAMissingPriceIsNotKnown() {
        assertThat(Price.of(7).minus(Price.of(5))).isEqualTo(Price.of(2));
        assertThat(Price.of(7).minus(UNKNOWN).isKnown()).isFalse();
        assertThat(UNKNOWN.minus(Price.of(7)).isKnown()).isFalse();
    }

    @Test
    void noneOfSomethingUnpricedCostsNothing() {
        assertThat(UNKNOWN.times(0)).isEqualTo(Price.of(0));
        assertThat(UNKNOWN.times(2).isKnown()).isFalse();
        assertThat(Price.of(7).times(2)).isEqualTo(Price.of(14));
    }

    @Test
    void aPriceIsANumber() {
        assertThatThrownBy(() -> Price.of(Double.NaN)).hasMessageContaining("have NaN");
        assertThat(Price.of(184).words()).isEqualTo("184.00");
    }

    @Test
    void aTotalSaysWhatItLacks() {
        Price joints = Price.of(312);
        SetCost whole = new SetCost(Price.of(290), joints, Price.of(92), 46, Price.of(10));
        SetCost shaftless =
                new SetCost(Price.lacking("no blank"), joints, Price.of(92), 46, Price.of(10));
        SetCost bare = new SetCost(Price.lacking("no shaft"), UNKNOWN, UNKNOWN, 0, UNKNOWN);

        assertThat(whole.total()).isEqualTo(Price.of(740));
        assertThat(whole.withSpares()).isEqualTo(Price.of(750));
        assertThat(whole.missing()).isEmpty();
        assertThat(shaftless.total()).isEqualTo(Price.lacking("450.00 without shafts"));
        assertThat(shaftless.withSpares().words()).isEqualTo("not priced");
        assertThat(shaftless.missing()).containsExactly("shafts");
        assertThat(bare.total().words()).isEqualTo("not priced");
        assertThat(bare.missing()).containsExactly("shafts", "joints", "boots");
    }
}
