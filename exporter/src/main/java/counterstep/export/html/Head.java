package counterstep.export.html;

/** What stands before the body of every page: its title and its sheet, and that nothing loads. */
public final class Head {
    private Head() {}

    /**
     * Opens a page and sets its head; the body is next.
     *
     * @param language BCP 47 tag
     * @param title for the tab of a browser
     */
    public static void set(Markup markup, String language, String title, Style style) {
        set(markup, language, title, style, style.policy());
    }

    static void set(Markup markup, String language, String title, Style style, String policy) {
        markup.own("<!DOCTYPE html>\n").open("html", "lang", language);
        markup.open("head").open("meta", "charset", "utf-8");
        markup.open("meta", "http-equiv", "Content-Security-Policy", "content", policy);
        markup.open("meta", "name", "viewport", "content", "width=device-width, initial-scale=1");
        markup.element("title", title);
        markup.open("style").own(style.sheet()).close().close();
    }
}
