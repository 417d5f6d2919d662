package shaftwright.study;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatExceptionOfType;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import java.util.Optional;
import org.junit.jupiter.api.Test;
import shaftwright.build.Build;
import shaftwright.build.Corner;
import shaftwright.build.LinkageAtRide;
import shaftwright.build.Side;
import shaftwright.shaft.FittedPosition;
import shaftwright.shaft.SideResult;
import shaftwright.suspension.Calibration;
import shaftwright.suspension.HubPoint;
import shaftwright.suspension.UnusableLinkageException;

/** A build whose hub paths come from linkages. */
class LinkageStudyTest {
    private static SideResult shaft(Build build, String scenario) {
        return Study.of(build).scenario(scenario).side(Side.LEFT).result().orElseThrow();
    }

    private static LinkageStudy left(Study study) {
        return ((PathStudy.Solved) study.path(Side.LEFT)).linkage();
    }

    @Test
    void hubGoesRoundTheArmsPivot() {
        for (FittedPosition row : shaft(LinkageBuild.of(LinkageBuild.unread()), "A").fitted()) {
            HubPoint hub = row.position().hub();
            assertThat(hub.reach()).isCloseTo(LinkageBuild.REACH, within(0.01));
            assertThat(hub.foreAft()).isCloseTo(LinkageBuild.foreAft(hub.t()), within(0.01));
            assertThat(hub.doubt()).isZero();
        }
    }

    @Test
    void verdictAsksForNoReadings() {
        ScenarioVerdict verdict =
                Study.of(LinkageBuild.of(LinkageBuild.unread())).scenario("A").verdict();
        assertThat(verdict.severity()).isEqualTo(Severity.FITS);
    }

    @Test
    void readingsThatAgreeAddNextToNoDoubt() {
        LinkageStudy study = left(Study.of(LinkageBuild.of(LinkageBuild.read(0))));
        assertThat(study.calibration().orElseThrow().agreement())
                .isEqualTo(Calibration.Agreement.WITHIN_TAPE);
        assertThat(study.doubt()).isZero();
    }

    /** Readings all 5 mm long: twice what the tape, of some tenths of a mm, leaves unexplained. */
    @Test
    void readingsThatDifferMakeThePathDoubtful() {
        Build build = LinkageBuild.of(LinkageBuild.read(5));
        LinkageStudy study = left(Study.of(build));
        double tape = study.calibration().orElseThrow().tape();
        assertThat(tape).isBetween(0.1, 1.0);
        double doubt = 2 * Math.sqrt(25 - tape * tape);
        assertThat(study.doubt()).isCloseTo(doubt, within(0.02));
        assertThat(shaft(build, "A").atRide().position().hub().doubt()).isEqualTo(study.doubt());
    }

    @Test
    void scenarioMayHaveALinkageOfItsOwnWithTheDoubtOfTheOthers() {
        Build build =
                LinkageBuild.of(LinkageBuild.read(5))
                        .withScenario(
                                LinkageBuild.scenario("B")
                                        .linkage(
                                                Side.LEFT,
                                                LinkageBuild.arm(LinkageBuild.REACH + 25))
                                        .build());
        HubPoint usual = shaft(build, "A").atRide().position().hub();
        HubPoint own = shaft(build, "B").atRide().position().hub();
        assertThat(own.reach() - usual.reach()).isCloseTo(25, within(0.01));
        assertThat(own.doubt()).isEqualTo(usual.doubt());
        SideResult right = Study.of(build).scenario("B").side(Side.RIGHT).result().orElseThrow();
        assertThat(right.atRide().position().hub().reach()).isEqualTo(usual.reach());
    }

    @Test
    void ownLinkageNeedsASideWhosePathComesFromOne() {
        Build measured =
                Build.of(
                        LinkageBuild.of(LinkageBuild.unread()).vehicle(),
                        Corner.of(LinkageBuild.read(0)),
                        LinkageBuild.of(LinkageBuild.unread()).stock());
        assertThatIllegalArgumentException()
                .isThrownBy(
                        () ->
                                measured.withScenario(
                                        LinkageBuild.scenario("B")
                                                .linkage(Side.RIGHT, LinkageBuild.arm())
                                                .build()))
                .withMessageContaining("scenario B")
                .withMessageContaining("right");
    }

    @Test
    void travelBeyondTheArmIsRefusedWithItsEnd() {
        LinkageAtRide arm = LinkageBuild.arm();
        LinkageAtRide tooFar = new LinkageAtRide(arm.linkage(), -120, LinkageBuild.ARM + 50);
        assertThatExceptionOfType(UnusableLinkageException.class)
                .isThrownBy(() -> LinkageStudy.of(tooFar, Optional.empty()))
                .satisfies(
                        refusal -> {
                            assertThat(refusal.problems()).hasSize(1);
                            assertThat(refusal.problems().get(0).stop().orElseThrow().reached())
                                    .isCloseTo(LinkageBuild.ARM, within(0.02));
                        });
    }
}
