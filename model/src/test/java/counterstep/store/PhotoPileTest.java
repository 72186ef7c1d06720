package counterstep.store;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.Optional;
import java.util.Random;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

final class PhotoPileTest {
    private static byte[] photo(int number) {
        byte[] bytes = new byte[1000 * number];
        new Random(number).nextBytes(bytes);
        return bytes;
    }

    private static byte[] read(PhotoPile pile, int number) {
        return pile.bytes(number + ".jpg").orElseThrow();
    }

    @Test
    void eachComesBackAsItWasLaidThereInWhateverOrder() {
        PhotoPile pile = new PhotoPile();
        IntStream.rangeClosed(0, 20).forEach(number -> pile.add(number + ".jpg", photo(number)));
        assertArrayEquals(photo(7), read(pile, 7));
        pile.add("21.jpg", photo(21));
        IntStream.rangeClosed(0, 21)
                .map(number -> 21 - number)
                .forEach(number -> assertArrayEquals(photo(number), read(pile, number)));
        assertEquals(Optional.empty(), pile.bytes("22.jpg"));
    }

    @Test
    void theSameOneTwiceLiesThereOnce() {
        PhotoPile pile = new PhotoPile();
        pile.add("3.jpg", photo(3));
        pile.add("3.jpg", photo(3));
        assertArrayEquals(photo(3), read(pile, 3));
    }

    @Test
    void aThreadThatIsStoppedTakesItFromNobody() {
        PhotoPile pile = new PhotoPile();
        pile.add("3.jpg", photo(3));
        Thread.currentThread().interrupt();
        try {
            assertArrayEquals(photo(3), read(pile, 3));
        } finally {
            assertEquals(true, Thread.interrupted());
        }
        assertArrayEquals(photo(3), read(pile, 3));
    }
}
