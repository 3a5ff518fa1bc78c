package org.sunder.picture;

import java.util.Locale;
import org.springframework.web.util.HtmlUtils;
import org.sunder.engine.learning.model.Outcome;

/**
 * Writes one picture. Everything is drawn in the ink of the text around it, so that it reads by day, by night and in print;
 * what tells things apart is shape, dash and word. Texts are escaped here and nowhere else.
 */
public final class Svg {

    // That of the pages where a picture stands in one; a picture alone has the system's.
    private static final String FACE = "Barlow, system-ui, sans-serif";
    private static final double MARK = 30; // width of a mark about a centre

    private final StringBuilder out = new StringBuilder();

    /**
     * Begins a picture.
     *
     * @param width of its own coordinates
     * @param height of its own coordinates
     * @param title what it is
     * @param description what it shows, for those who cannot see it
     */
    public Svg(double width, double height, String title, String description) {
        add(
                "<svg xmlns=\"http://www.w3.org/2000/svg\" viewBox=\"0 0 %.0f %.0f\" role=\"img\""
                        + " font-family=\"" + FACE + "\" fill=\"currentColor\" stroke=\"none\"><title>%s</title>"
                        + "<desc>%s</desc>",
                width,
                height,
                escape(title),
                escape(description));
    }

    private Svg(String head) {
        out.append(head);
    }

    /**
     * Begins a picture drawn for the width that it gets, so that its texts keep their size. What it draws carries classes: a
     * style sheet gives them tints, and without one all is ink on the canvas.
     *
     * @param width in CSS pixels
     * @param height in CSS pixels
     * @param css its class
     * @param title what it is
     * @param description what it shows, for those who cannot see it
     * @param linked whether there are links in it; then it is a group, since nothing inside an image can be reached
     */
    public static Svg sized(double width, double height, String css, String title, String description, boolean linked) {
        return new Svg(String.format(
                Locale.ROOT,
                "<svg xmlns=\"http://www.w3.org/2000/svg\" class=\"%s\" width=\"%.0f\" height=\"%.0f\""
                        + " viewBox=\"0 0 %.0f %.0f\" role=\"%s\" aria-label=\"%s\" font-family=\"" + FACE + "\""
                        + " fill=\"currentColor\" stroke=\"none\"><title>%s</title><desc>%s</desc>",
                css,
                width,
                height,
                width,
                height,
                linked ? "group" : "img",
                escape(title + ". " + description),
                escape(title),
                escape(description)));
    }

    /** How a shape is drawn where no style sheet says otherwise. */
    public enum Paint {
        INK(""),
        LIGHT("fill-opacity=\"0.15\""),
        CANVAS("fill=\"Canvas\""),
        OUTLINE("fill=\"Canvas\" stroke=\"currentColor\" stroke-width=\"1.6\""),
        STRUCK("fill=\"Canvas\" stroke=\"currentColor\" stroke-width=\"1.6\" stroke-dasharray=\"5 4\""),
        LINE("fill=\"none\" stroke=\"currentColor\" stroke-width=\"1\""),
        STRONG("fill=\"none\" stroke=\"currentColor\" stroke-width=\"2\""),
        DASHES("fill=\"none\" stroke=\"currentColor\" stroke-width=\"1.6\" stroke-dasharray=\"4 3\""),
        DOTS("fill=\"none\" stroke=\"currentColor\" stroke-width=\"2.5\" stroke-dasharray=\"2.5 2.5\"");

        private final String style;

        Paint(String style) {
            this.style = style;
        }
    }

    /** How heavy letters are. */
    public enum Weight {
        REGULAR(400),
        BOLD(700);

        private final int value;

        Weight(int value) {
            this.value = value;
        }
    }

    /** Opens a group of a class. */
    public Svg open(String css) {
        out.append("<g");
        attribute("class", css).append('>');
        return this;
    }

    /** Opens a group of a class that tells a pointer over it what it is. */
    public Svg open(String css, String words) {
        open(css).out.append("<title>").append(escape(words)).append("</title>");
        return this;
    }

    /** Opens a group whose own coordinates are moved and scaled. */
    public Svg openAt(String css, double x, double y, double scale) {
        return add("<g class=\"%s\" transform=\"translate(%.1f %.1f) scale(%.3f)\">", css, x, y, scale);
    }

    /** Closes a group. */
    public Svg close() {
        out.append("</g>");
        return this;
    }

    /** Opens a link. */
    public Svg openLink(String css, String address, String words) {
        out.append("<a");
        attribute("class", css);
        attribute("href", escape(address));
        attribute("aria-label", escape(words)).append('>');
        return this;
    }

    /** Closes a link. */
    public Svg closeLink() {
        out.append("</a>");
        return this;
    }

    /** A shape given as the data of a path. */
    public Svg shape(String css, Paint paint, String data) {
        out.append("<path");
        attribute("class", css).append(' ').append(paint.style);
        attribute("d", data).append("/>");
        return this;
    }

    /** A rectangle. */
    public Svg box(String css, Paint paint, double x, double y, double width, double height, double round) {
        out.append("<rect");
        attribute("class", css).append(' ').append(paint.style);
        attribute("x", x).attribute("y", y).attribute("width", width).attribute("height", height);
        attribute("rx", round).out.append("/>");
        return this;
    }

    /** A straight line. */
    public Svg stroke(String css, Paint paint, double x1, double y1, double x2, double y2) {
        out.append("<line");
        attribute("class", css).append(' ').append(paint.style);
        attribute("x1", x1)
                .attribute("y1", y1)
                .attribute("x2", x2)
                .attribute("y2", y2)
                .out
                .append("/>");
        return this;
    }

    /** A text in ink or, on a shape filled with ink, in the canvas; {@code y} is its base line. */
    public Svg words(
            String css, boolean onInk, double x, double y, double size, Weight weight, Anchor anchor, String words) {
        out.append("<text");
        attribute("class", css).append(onInk ? " fill=\"Canvas\"" : "");
        attribute("x", x).attribute("y", y);
        attribute("font-size", String.valueOf(Math.round(size)));
        attribute("font-weight", String.valueOf(weight.value));
        attribute("text-anchor", anchor.name().toLowerCase(Locale.ROOT))
                .append('>')
                .append(escape(words))
                .append("</text>");
        return this;
    }

    /** How a line is drawn. */
    public enum Line {
        THIN("stroke-width=\"1\""),
        FAINT("stroke-width=\"1\" stroke-opacity=\"0.3\""),
        BOLD("stroke-width=\"2.5\""),
        DASHED("stroke-width=\"1.5\" stroke-dasharray=\"7 4\""),
        DOTTED("stroke-width=\"1.5\" stroke-dasharray=\"1.5 4\"");

        private final String style;

        Line(String style) {
            this.style = style;
        }
    }

    /** Where a text stands beside its point. */
    public enum Anchor {
        START,
        MIDDLE,
        END
    }

    /** A straight line. */
    public Svg line(double x1, double y1, double x2, double y2, Line line) {
        return add(
                "<line x1=\"%.1f\" y1=\"%.1f\" x2=\"%.1f\" y2=\"%.1f\" stroke=\"currentColor\" %s/>",
                x1, y1, x2, y2, line.style);
    }

    /** A path; see {@link Trace}. */
    public Svg path(Trace trace, Line line) {
        return add("<path d=\"%s\" fill=\"none\" stroke=\"currentColor\" %s/>", trace, line.style);
    }

    /** A closed area in a light tint. */
    public Svg area(Trace trace) {
        return add("<path d=\"%sZ\" fill-opacity=\"0.15\"/>", trace);
    }

    /** A text; {@code y} is its base line. */
    public Svg text(double x, double y, double size, Anchor anchor, String words) {
        return add(
                "<text x=\"%.1f\" y=\"%.1f\" font-size=\"%.1f\" text-anchor=\"%s\">%s</text>",
                x, y, size, anchor.name().toLowerCase(Locale.ROOT), escape(words));
    }

    /**
     * The mark of an outcome about a centre.
     *
     * @param counted false draws it in outline, struck through
     * @param words what a pointer over it says
     */
    public Svg mark(double x, double y, Outcome outcome, boolean counted, String words) {
        new OutcomeMark(outcome, !counted, false, false).draw(this, x, y + MARK / 4, MARK, words);
        return this;
    }

    /** The finished picture. */
    public String end() {
        return out + "</svg>";
    }

    private StringBuilder attribute(String name, String value) {
        return out.append(' ').append(name).append("=\"").append(value).append('"');
    }

    private Svg attribute(String name, double value) {
        Tenths.add(out.append(' ').append(name).append("=\""), value).append('"');
        return this;
    }

    private Svg add(String format, Object... values) {
        out.append(String.format(Locale.ROOT, format, values));
        return this;
    }

    private static String escape(String text) {
        return HtmlUtils.htmlEscape(text, "UTF-8");
    }
}
