package counterstep.check.equipment;

import static org.junit.jupiter.api.Assertions.assertEquals;

import counterstep.model.Drive;
import counterstep.model.DriveKind;
import counterstep.model.FastenerSet;
import counterstep.testing.Found;
import counterstep.testing.Mended;
import counterstep.testing.Screws;
import counterstep.testing.Sketch;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

final class LookAlikesTest {
    private static final Optional<Drive> T5 = Optional.of(new Drive(DriveKind.HEXALOBULAR, "5"));

    private static FastenerSet screws(String id, double length, String tray) {
        return Screws.metric(id, 2, T5, 1.6, OptionalDouble.of(length)).withTray(tray);
    }

    private static Sketch both(FastenerSet one, FastenerSet other) {
        return Sketch.of()
                .item(one)
                .item(other)
                .steps("remove f1", "remove f2", "reinstall f2", "reinstall f1");
    }

    @Test
    void twoLengthsOnTheMatAtOnceAreMixedUp() {
        Sketch sketch = both(screws("f1", 4, ""), screws("f2", 5.5, ""));
        assertEquals(
                List.of(
                        "look-alikes [s2, s1] [f1, f2] After step 2 f1 screws (M1.6 × 4) and f2"
                                + " screws (M1.6 × 5.5) lie on the mat, alike but for their length"
                                + " and in no trays of their own."),
                Found.in(sketch));
    }

    @ParameterizedTest
    @CsvSource({"4, 4, 0", "4, 4.1, 1", "4, 6, 1", "3.9, 5.9, 1", "4, 6.1, 0", "6, 4, 1"})
    void aDifferenceOfUpToTwoMillimetresIsHardToSee(double one, double other, int findings) {
        assertEquals(
                findings, Found.in(both(screws("f1", one, ""), screws("f2", other, ""))).size());
    }

    @ParameterizedTest
    @CsvSource({"A, B, 0", "A, '', 1", "A, ' a', 1"})
    void traysOfDifferentNamesKeepThemApart(String one, String other, int findings) {
        assertEquals(findings, Found.in(both(screws("f1", 4, one), screws("f2", 5, other))).size());
    }

    @Test
    void aLengthThatIsNotStatedMayDiffer() {
        FastenerSet unstated = Screws.metric("f2", 2, T5, 1.6, OptionalDouble.empty());
        assertEquals(1, Found.in(both(screws("f1", 4, ""), unstated)).size());
    }

    @Test
    void anotherDriveIsSeen() {
        Optional<Drive> other = Optional.of(new Drive(DriveKind.CROSS_H, "0"));
        FastenerSet crossed = Screws.metric("f2", 2, other, 1.6, OptionalDouble.of(5));
        assertEquals(List.of(), Found.in(both(screws("f1", 4, ""), crossed)));
    }

    @Test
    void oneAfterTheOtherIsNotAtOnce() {
        assertEquals(
                List.of(),
                Found.in(
                        Sketch.of()
                                .item(screws("f1", 4, ""))
                                .item(screws("f2", 5, ""))
                                .steps("remove f1", "reinstall f1", "remove f2", "reinstall f2")
                                .link(1, 2)
                                .link(2, 3)
                                .link(3, 4)));
    }

    private static Sketch oneAfterTheOther() {
        return Sketch.of()
                .item(screws("f1", 4, ""))
                .item(screws("f2", 5, ""))
                .steps("remove f1", "reinstall f1", "remove f2", "reinstall f2")
                .link(1, 2)
                .link(3, 4);
    }

    @Test
    void butTheLinksMayLetThemBeAtOnce() {
        assertEquals(
                List.of(
                        "look-alikes [s3, s1] [f1, f2] In some order: After step 3 f1 screws (M1.6 ×"
                                + " 4) and f2 screws (M1.6 × 5) lie on the mat, alike but for their"
                                + " length and in no trays of their own."),
                Found.in(oneAfterTheOther()));
        Mended mended = Mended.of(oneAfterTheOther().procedure(), "look-alikes").orElseThrow();
        assertEquals("Name trays", mended.name());
        assertEquals(List.of(), Found.in(mended.procedure()));
    }

    private static Sketch three() {
        return Sketch.of()
                .item(screws("f1", 4, "A"))
                .item(screws("f2", 5.5, "A"))
                .item(screws("f3", 7, ""))
                .steps(
                        "remove f1",
                        "remove f2",
                        "remove f3",
                        "reinstall f3",
                        "reinstall f2",
                        "reinstall f1");
    }

    @Test
    void severalAreOneFinding() {
        assertEquals(
                List.of("look-alikes [s2, s1, s3] [f1, f2, f3]"),
                Found.in(three()).stream()
                        .map(line -> line.substring(0, line.indexOf(" After")))
                        .toList());
    }

    @Test
    void eachGetsATrayOfItsOwn() {
        Mended mended = Mended.of(three().procedure(), "look-alikes").orElseThrow();
        assertEquals("Name trays", mended.name());
        assertEquals(
                List.of("A", "B", "C"),
                mended.procedure().items().stream()
                        .map(item -> ((FastenerSet) item).tray())
                        .toList());
        assertEquals(List.of(), Found.in(mended.procedure()));
    }
}
