package counterstep.export.html;

import counterstep.export.guide.PhotoBlock;
import counterstep.export.picture.CalloutFigure;
import counterstep.export.picture.EncodedPicture;
import counterstep.export.picture.NumberedPicture;
import counterstep.export.shape.SvgMark;
import counterstep.model.Callout;
import counterstep.model.Numbers;
import java.awt.Shape;
import java.util.function.Function;

/** Sets a photo with its callouts over it, or a named empty frame where there is no photo. */
final class PhotoSetter {
    /** Width in which callouts are laid out; the drawing scales with the photo. */
    private static final double WIDTH = 400;

    /** Width of a photo on paper, in CSS pixels of a 96th of an inch; the column is as wide. */
    private static final int WIDE_ON_PAPER = 212;

    private static final int TALL_ON_PAPER = 148;

    private final Markup markup;
    private final Medium medium;
    private final Function<EncodedPicture, String> address;

    /**
     * @param address where the page finds a photo
     */
    PhotoSetter(Markup markup, Medium medium, Function<EncodedPicture, String> address) {
        this.markup = markup;
        this.medium = medium;
        this.address = address;
    }

    void set(PhotoBlock photo) {
        markup.open("figure");
        photo.picture()
                .encoded()
                .ifPresentOrElse(
                        picture -> {
                            switch (medium) {
                                case BROWSER -> overlaid(photo, picture);
                                case PAPER -> drawnIn(photo, picture);
                            }
                        },
                        () -> lacking(photo));
        if (!photo.seenFrom().isBlank()) {
            markup.element("figcaption", "seen from " + photo.seenFrom());
        }
        markup.close();
    }

    private void drawnIn(PhotoBlock photo, EncodedPicture picture) {
        open(photo, NumberedPicture.of(picture, photo.callouts()));
        markup.close();
    }

    private void open(PhotoBlock photo, EncodedPicture picture) {
        boolean tall = picture.height() * 4 > picture.width() * 5;
        int width =
                switch (medium) {
                    case BROWSER -> picture.width();
                    case PAPER -> tall ? TALL_ON_PAPER : WIDE_ON_PAPER;
                };
        long height = Math.round((double) width * picture.height() / picture.width());
        markup.open("div", "class", tall ? "photo tall" : "photo");
        markup.open(
                "img",
                "src",
                address.apply(picture),
                "width",
                Integer.toString(width),
                "height",
                Long.toString(height),
                "alt",
                photo.alternative());
    }

    private void overlaid(PhotoBlock photo, EncodedPicture picture) {
        open(photo, picture);
        if (!photo.callouts().isEmpty()) {
            double height = WIDTH * picture.height() / picture.width();
            markup.own("<svg aria-hidden=\"true\" viewBox=\"0 0 " + Numbers.plain(WIDTH));
            markup.own(" " + Numbers.plain(height) + "\">");
            photo.callouts().forEach(callout -> callout(callout, height));
            markup.own("</svg>");
        }
        markup.close();
    }

    private void callout(Callout callout, double height) {
        CalloutFigure figure = CalloutFigure.of(callout, WIDTH, height);
        path("rim", CalloutFigure.rim(figure.leader(), figure.radius()));
        path("rim", CalloutFigure.rim(figure.disc(), figure.radius()));
        path("ink", figure.leader());
        path("ink", figure.disc());
        markup.own("<text x=\"" + Numbers.plain(figure.disc().getCenterX()));
        double baseline = figure.disc().getCenterY() + figure.radius() * 0.46;
        markup.own("\" y=\"" + Numbers.plain(baseline) + "\">");
        markup.text(Integer.toString(callout.number())).own("</text>");
    }

    private void path(String kind, Shape outline) {
        String data = SvgMark.data(outline);
        if (!data.isEmpty()) {
            markup.own("<path class=\"" + kind + "\" d=\"" + data + "\"/>");
        }
    }

    private void lacking(PhotoBlock photo) {
        markup.open("div", "class", "frame");
        markup.element("span", photo.picture().trouble(), "class", "trouble");
        markup.element("span", photo.file());
        markup.element("span", photo.alternative());
        markup.close();
    }
}
