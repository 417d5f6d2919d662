package shaftwright.strength;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;

class FlangeBoltsTest {
    private static final double SQUARE_INCH = 645.16;

    /** Square inches: tables differ by one in their last digit. */
    private static final double LAST_DIGIT = 0.0001;

    private static final BoltThread M10 = BoltThread.metric(10, 1.5);

    /** The tables round areas and loads to three digits, loads downward. */
    private static final double THREE_DIGITS = 0.007;

    @ParameterizedTest
    @CsvFileSource(resources = "bolt-loads.csv", numLinesToSkip = 1)
    void areasAndLoadsOfTheStandard(
            double diameter,
            double pitch,
            double area,
            double proof88,
            double proof109,
            double proof129) {
        BoltThread thread = BoltThread.metric(diameter, pitch);

        assertThat(thread.stressArea()).isCloseTo(area, within(THREE_DIGITS * area));
        assertThat(proofLoad(thread, BoltClass.ISO_8_8))
                .isCloseTo(proof88, within(THREE_DIGITS * proof88));
        assertThat(proofLoad(thread, BoltClass.ISO_10_9))
                .isCloseTo(proof109, within(THREE_DIGITS * proof109));
        assertThat(proofLoad(thread, BoltClass.ISO_12_9))
                .isCloseTo(proof129, within(THREE_DIGITS * proof129));
    }

    private static double proofLoad(BoltThread thread, BoltClass boltClass) {
        return new FlangeBolts(thread, boltClass, 6, 80, 10, 0.2, 0.15).proofLoad() / 1000;
    }

    @ParameterizedTest
    @CsvFileSource(resources = "inch-threads.csv", numLinesToSkip = 1)
    void areasOfInchThreads(double diameter, double threads, double area) {
        assertThat(BoltThread.inch(diameter, threads).stressArea() / SQUARE_INCH)
                .isCloseTo(area, within(LAST_DIGIT));
    }

    /** SAE J429 (from memory): grade 5 has 85 ksi proof, grade 8 has 120. */
    @Test
    void inchGrades() {
        assertThat(BoltClass.SAE_5.proofStress(9.5) / 6.894757).isCloseTo(85, within(0.1));
        assertThat(BoltClass.SAE_8.proofStress(9.5) / 6.894757).isCloseTo(120, within(0.1));
    }

    /** ISO 898-1, from memory: class 8.8 has 580 MPa proof to 16 mm and 600 MPa above. */
    @Test
    void largeBoltsOfClass88() {
        assertThat(BoltClass.ISO_8_8.proofStress(16)).isEqualTo(580);
        assertThat(BoltClass.ISO_8_8.proofStress(18)).isEqualTo(600);
    }

    /** By hand: F = 48/(0.2·0.010) = 24 kN; 6·24000·0.15·0.043 = 928.8 N·m. */
    @Test
    void frictionOfSixBolts() {
        FlangeBolts bolts = new FlangeBolts(M10, BoltClass.ISO_10_9, 6, 86, 48, 0.2, 0.15);

        assertThat(bolts.preload()).isCloseTo(24_000, within(1e-6));
        assertThat(bolts.frictionCapacity()).isCloseTo(928.8, within(1e-6));
        assertThat(BoltThread.engagedDiameters(15, M10.diameter())).isEqualTo(1.5);
    }

    /** By hand: 6·48.1 kN/√3·0.043 m = 7.17 kN·m: shear takes far more than friction. */
    @Test
    void shearIsTheFallback() {
        FlangeBolts bolts = new FlangeBolts(M10, BoltClass.ISO_10_9, 6, 86, 48, 0.2, 0.15);

        assertThat(bolts.shearCapacity()).isCloseTo(7170, within(20.0));
    }

    @Test
    void boltsTightenedTooFarAreNotCountedOn() {
        FlangeBolts bolts = new FlangeBolts(M10, BoltClass.ISO_8_8, 6, 86, 60, 0.2, 0.15);

        assertThat(bolts.preloadShare()).isGreaterThan(0.75);
        assertThat(bolts.tooTight()).isTrue();
        assertThat(bolts.frictionCapacity()).isZero();
        assertThat(bolts.mostTorque()).isCloseTo(50.5, within(0.1));
    }
}
