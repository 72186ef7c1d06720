package counterstep.check.completeness;

import static org.junit.jupiter.api.Assertions.assertEquals;

import counterstep.model.Phase;
import counterstep.model.StepId;
import counterstep.review.Review;
import counterstep.testing.Found;
import counterstep.testing.Sketch;
import java.util.List;
import org.junit.jupiter.api.Test;

final class NotTriedAtTheEndTest {
    @Test
    void asksForACheckAfterTheLastStepOfReassembly() {
        assertEquals(
                List.of(
                        "not-tried-at-the-end [s2] [] Nobody checks the device after step 2, the last of reassembly."),
                Found.in(
                        Sketch.of()
                                .screws("f1", 2)
                                .steps("remove f1")
                                .phase(Phase.REASSEMBLY)
                                .steps("reinstall f1")));
    }

    @Test
    void aCheckBeforeTheLastStepIsNotEnough() {
        assertEquals(
                List.of(
                        "not-tried-at-the-end [s2] [] Nobody checks the device after step 2, the last of reassembly."),
                Found.in(
                        Sketch.of()
                                .screws("f1", 2)
                                .steps("remove f1")
                                .phase(Phase.REASSEMBLY)
                                .steps("check; reinstall f1")));
    }

    @Test
    void isSilentAfterACheck() {
        assertEquals(
                List.of(),
                Found.in(
                        Sketch.of()
                                .screws("f1", 2)
                                .steps("remove f1")
                                .phase(Phase.REASSEMBLY)
                                .steps("reinstall f1")
                                .phase(Phase.VERIFY)
                                .steps("check")));
    }

    @Test
    void isSilentWhileNothingIsReassembled() {
        assertEquals(List.of(), Found.in(Sketch.of().connectors("c1", 1).steps("check c1")));
    }

    @Test
    void aTrialBeforeThePlugGoesInIsNotEnough() {
        assertEquals(
                1,
                Found.in(
                                Sketch.of()
                                        .connectors("c1", 1)
                                        .steps("disconnect c1")
                                        .phase(Phase.VERIFY)
                                        .steps("check", "reconnect c1"))
                        .size());
    }

    private static Sketch twoParts() {
        return Sketch.of()
                .screws("f1", 2)
                .screws("f2", 2)
                .steps("remove f1; remove f2")
                .phase(Phase.REASSEMBLY)
                .steps("reinstall f1", "reinstall f2")
                .phase(Phase.VERIFY)
                .steps("check")
                .link(1, 2)
                .link(1, 3)
                .link(2, 4);
    }

    @Test
    void aStepThatTheLinksLetComeAfterTheTrialIsTold() {
        assertEquals(
                List.of(
                        "not-tried-at-the-end [s3] [] In some order: Nobody checks the device after step 3, the last of reassembly."),
                Found.in(twoParts()));
        assertEquals(
                List.of("s1", "s2", "s4"),
                Review.of(twoParts().procedure())
                        .findings()
                        .get(0)
                        .witness()
                        .orElseThrow()
                        .first()
                        .stream()
                        .map(StepId::toString)
                        .toList());
    }

    @Test
    void aTrialThatComesAfterAllIsEnough() {
        assertEquals(List.of(), Found.in(twoParts().link(3, 4)));
    }
}
