package shaftwright.study;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.function.Predicate;
import org.junit.jupiter.api.Test;
import shaftwright.build.Build;
import shaftwright.build.Margins;
import shaftwright.build.Market;
import shaftwright.build.RatedJoint;
import shaftwright.build.Scenario;
import shaftwright.build.Spares;
import shaftwright.build.WorkPrices;
import shaftwright.joint.Joint;
import shaftwright.study.Modification.Counterbored;
import shaftwright.study.Modification.Moved;
import shaftwright.study.Modification.OtherBoot;
import shaftwright.study.Modification.OtherJoint;
import shaftwright.units.LengthUnit;

/** Levers of a build without a workbook, held against builds studied from their readings on. */
class LeverSearchTest {
    private static final LengthUnit MM = LengthUnit.MILLIMETRE;

    /** Short of its margins by 3 mm, with joints of too little plunge. */
    private static final Scenario.Builder SHORT =
            PricedBuild.scenario(PricedBuild.SMALL).margins(new Margins(14, 14));

    private static final Build BUILD = PricedBuild.with(SHORT);

    private static List<Lever> levers() {
        return Study.of(BUILD).levers("A", MM);
    }

    private static ScenarioStudy anew(Scenario scenario) {
        return Study.of(BUILD.withScenario(scenario)).scenario("A");
    }

    private static double width(ScenarioStudy study) {
        return study.narrowerWindow().orElseThrow();
    }

    @Test
    void everyLeverDoesWhatItSays() {
        ScenarioStudy now = Study.of(BUILD).scenario("A");
        assertThat(now.fits()).isFalse();
        assertThat(levers()).hasSize(12);
        for (Lever lever : levers()) {
            ScenarioStudy after = anew(lever.scenario());
            assertThat(width(after) - width(now))
                    .as(lever.words(MM))
                    .isEqualTo(lever.gain(), within(1e-9));
            assertThat(after.verdict().holds()).as(lever.words(MM)).isEqualTo(lever.fits());
        }
    }

    @Test
    void theLimitStrapIsShortenedByTheLeastThatDoes() {
        Moved strap = move(Move.LESS_DROOP);

        assertThat(strap.by()).isEqualTo(Math.rint(strap.by()));
        for (int less = 1; less <= 55; less++) {
            Scenario tried =
                    SHORT.build().toBuilder()
                            .travel(SHORT.build().travel().withDroop(110 - less))
                            .build();
            assertThat(anew(tried).fits())
                    .as(less + " mm less droop")
                    .isEqualTo(less >= strap.by());
        }
    }

    private static Moved move(Move move) {
        return levers().stream()
                .flatMap(lever -> lever.changes().stream())
                .filter(change -> change instanceof Moved moved && moved.move() == move)
                .map(Moved.class::cast)
                .findFirst()
                .orElseThrow();
    }

    /** By invented prices: 38 for a ring seat, 110 for a joint in place of one of 60. */
    @Test
    void aCostIsWorkAndPartsOfTheWholeVehicle() {
        Lever joints =
                found(
                        change ->
                                change instanceof OtherJoint other
                                        && other.ends() == Ends.BOTH
                                        && other.joint().joint().equals(PricedBuild.LARGE));
        Lever seats =
                found(change -> change instanceof Counterbored sunk && sunk.ends() == Ends.BOTH);
        double blanks = Study.of(BUILD).scenario("A").cost().shafts().amount().orElse(Double.NaN);

        assertThat(joints.cost().amount().orElseThrow() - 4 * (110 - 60))
                .isEqualTo(shafts(joints) - blanks, within(1e-9));
        assertThat(seats.cost().amount().orElseThrow() - 4 * 38)
                .isEqualTo(shafts(seats) - blanks, within(1e-9));
    }

    private static double shafts(Lever lever) {
        return anew(lever.scenario()).cost().shafts().amount().orElseThrow();
    }

    private static Lever found(Predicate<Modification> wanted) {
        return levers().stream()
                .filter(lever -> wanted.test(lever.changes().get(0)))
                .findFirst()
                .orElseThrow();
    }

    @Test
    void workOfUnknownPriceIsNotFree() {
        WorkPrices work = BUILD.market().work();
        Market noParts = new Market(List.of(), List.of(), work, Spares.NONE);

        assertThat(work.driveUnit()).isEmpty();
        assertThat(Study.of(BUILD.with(noParts)).levers("A", MM))
                .filteredOn(lever -> lever.words(MM).startsWith("transaxle"))
                .isNotEmpty()
                .extracting(Lever::cost)
                .containsOnly(Price.lacking("not priced"));
    }

    @Test
    void whatMakesItFitComesFirstAndCheapestFirst() {
        List<Lever> fitting = levers().stream().filter(Lever::fits).toList();

        assertThat(levers().subList(0, fitting.size())).isEqualTo(fitting);
        assertThat(fitting)
                .extracting(lever -> lever.cost().amount().orElse(Double.POSITIVE_INFINITY))
                .isSorted();
    }

    /** Too deep a counterbore for its race: nobody can build it, so nobody is told to. */
    @Test
    void aJointThatCannotStandThereIsNoLever() {
        Joint thin =
                Joint.named("thin race", 1.5, PricedBuild.LARGE.bench(), 0.4).cupBottom(46).build();
        Market market =
                new Market(
                        List.of(RatedJoint.of(thin)),
                        List.of(PricedBuild.LONG),
                        WorkPrices.UNKNOWN,
                        Spares.NONE);

        assertThat(Study.of(BUILD.with(market)).levers("A", MM))
                .flatExtracting(Lever::changes)
                .hasAtLeastOneElementOfType(OtherBoot.class)
                .doesNotHaveAnyElementsOfTypes(OtherJoint.class);
    }

    @Test
    void whereNoSingleChangeHelpsPairsAreTried() {
        Scenario far = SHORT.build().toBuilder().margins(new Margins(26, 26)).build();
        List<Lever> levers = Study.of(BUILD.withScenario(far)).levers("A", MM);

        assertThat(levers.get(0).fits()).isTrue();
        assertThat(levers)
                .filteredOn(Lever::fits)
                .allSatisfy(
                        lever -> {
                            assertThat(lever.changes()).hasSize(2);
                            assertThat(lever.changes().get(0).meets(lever.changes().get(1)))
                                    .isFalse();
                            assertThat(lever.words(MM)).contains("; and ");
                            assertThat(anew(lever.scenario()).fits()).isTrue();
                        });
    }

    @Test
    void aScenarioBeyondItsPathHasNone() {
        Scenario far =
                SHORT.build().toBuilder().travel(SHORT.build().travel().withDroop(300)).build();

        assertThat(Study.of(BUILD.withScenario(far)).levers("A", MM)).isEmpty();
    }

    @Test
    void smallerMarginsAreTheLeastThatDo() {
        SmallerMargins smaller = Study.of(BUILD).variants("A").smallerMargins(MM).orElseThrow();

        for (int less = 0; less < 28; less++) {
            double each = 14 - less / 2.0;
            Scenario tried = SHORT.build().toBuilder().margins(new Margins(each, each)).build();
            assertThat(anew(tried).fits()).as(less + " mm less").isEqualTo(less >= smaller.less());
        }
        assertThat(smaller.words(MM))
                .startsWith("Margins " + smaller.less() + " mm smaller in all would do");
    }

    @Test
    void marginsOfAScenarioThatFitsAreNotTouched() {
        Scenario fits = PricedBuild.scenario(PricedBuild.LARGE).build();
        Study study = Study.of(BUILD.withScenario(fits));

        assertThat(study.scenario("A").fits()).isTrue();
        assertThat(study.variants("A").smallerMargins(MM)).isEmpty();
    }

    /** A quarter of a race 34 mm wide is 8.5 mm, of which 4 are gone. */
    @Test
    void aRingSeatIsSunkByNoMoreThanAQuarterOfTheRace() {
        assertThat(levers())
                .flatExtracting(Lever::changes)
                .filteredOn(change -> change instanceof Counterbored)
                .allSatisfy(
                        change -> assertThat(((Counterbored) change).deeper()).isBetween(1.0, 4.5));
    }
}
