package counterstep.export.shape;

import static org.junit.jupiter.api.Assertions.assertEquals;

import counterstep.model.ConnectorKind;
import org.junit.jupiter.api.Test;

final class SvgMarkTest {
    @Test
    void aMarkIsWrittenAsOutlinesInTheColourOfTheText() {
        assertEquals(
                "<svg class=\"mark\" width=\"14\" height=\"14\" viewBox=\"-9 -9 18 18\""
                        + " aria-hidden=\"true\">"
                        + "<path fill=\"none\" stroke=\"currentColor\" stroke-linejoin=\"round\""
                        + " stroke-width=\"1.5\" d=\"M-6 -4L0 -4L0 4L6 4\"/></svg>",
                SvgMark.element(
                        Mark.of(Piece.line(Outline.open(-6, -4, 0, -4, 0, 4, 6, 4), 1.5)), 14));
    }

    @Test
    void curvesAndClosedOutlinesKeepTheirForm() {
        assertEquals(
                "M1.8 0C1.8 0.99 0.99 1.8 0 1.8C-0.99 1.8 -1.8 0.99 -1.8 0"
                        + "C-1.8 -0.99 -0.99 -1.8 0 -1.8C0.99 -1.8 1.8 -0.99 1.8 0Z",
                SvgMark.data(ConnectorShape.of(ConnectorKind.COAX).pieces().get(1).outline()));
    }
}
