package org.sunder.picture;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.StringReader;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.IntStream;
import javax.xml.parsers.DocumentBuilderFactory;
import javax.xml.parsers.ParserConfigurationException;
import org.sunder.picture.Svg.Weight;
import org.w3c.dom.Document;
import org.w3c.dom.Element;
import org.xml.sax.InputSource;
import org.xml.sax.SAXException;

/** A picture as it was drawn, read back. */
record Drawn(Document picture) {

    private static final Pattern COLOUR = Pattern.compile("#[0-9a-fA-F]{3,}|rgb|hsl");
    private static final double LEAST_TEXT = 12;

    static Drawn of(String svg) {
        assertThat(COLOUR.matcher(svg.replaceAll(">[^<]*<", "><").replaceAll("(aria-label|href)=\"[^\"]*\"", ""))
                        .find())
                .as("colours are left to style sheets")
                .isFalse();
        try {
            return new Drawn(DocumentBuilderFactory.newInstance()
                    .newDocumentBuilder()
                    .parse(new InputSource(new StringReader(svg))));
        } catch (SAXException | IOException | ParserConfigurationException e) {
            throw new AssertionError(svg, e);
        }
    }

    /** What stands on the canvas. */
    record Box(String words, double left, double top, double right, double bottom) {

        boolean touches(Box other) {
            return left < other.right && right > other.left && top < other.bottom && bottom > other.top;
        }
    }

    /** Elements of a class, in the order drawn. */
    List<Element> all(String css) {
        var found = picture.getElementsByTagName("*");
        return IntStream.range(0, found.getLength())
                .mapToObj(i -> (Element) found.item(i))
                .filter(element -> Arrays.asList(element.getAttribute("class").split(" ", -1))
                        .contains(css))
                .toList();
    }

    /** The only element of a class. */
    Element one(String css) {
        assertThat(all(css)).as(css).hasSize(1);
        return all(css).get(0);
    }

    static double number(Element element, String attribute) {
        return Double.parseDouble(element.getAttribute(attribute));
    }

    String title() {
        return picture.getElementsByTagName("title").item(0).getTextContent();
    }

    String description() {
        return picture.getElementsByTagName("desc").item(0).getTextContent();
    }

    double width() {
        return number(picture.getDocumentElement(), "width");
    }

    double height() {
        return number(picture.getDocumentElement(), "height");
    }

    /** Every text in the room it takes at most. */
    List<Box> texts() {
        var texts = picture.getElementsByTagName("text");
        List<Box> boxes = new ArrayList<>();
        for (int i = 0; i < texts.getLength(); i++) {
            Element text = (Element) texts.item(i);
            double size = number(text, "font-size");
            Weight weight = text.getAttribute("font-weight").equals("700") ? Weight.BOLD : Weight.REGULAR;
            double wide = Lettering.width(text.getTextContent(), size, weight);
            double x = number(text, "x");
            double left = switch (text.getAttribute("text-anchor")) {
                case "start" -> x;
                case "end" -> x - wide;
                default -> x - wide / 2;
            };
            double base = number(text, "y");
            boxes.add(new Box(text.getTextContent(), left, base - 0.75 * size, left + wide, base + 0.2 * size));
        }
        return boxes;
    }

    /** The corners that a path in absolute coordinates runs through. */
    static Box bounds(Element path) {
        double[] box = {Double.MAX_VALUE, Double.MAX_VALUE, -Double.MAX_VALUE, -Double.MAX_VALUE};
        Matcher parts = Pattern.compile("([A-Z])([^A-Z]*)").matcher(path.getAttribute("d"));
        while (parts.find()) {
            String numbers = parts.group(2).strip();
            String[] values = numbers.isEmpty() ? new String[0] : numbers.split("[ ,]+", -1);
            for (int i = 0; i < values.length; i++) {
                boolean across = switch (parts.group(1)) {
                    case "H" -> true;
                    case "V" -> false;
                    default -> i % 2 == 0;
                };
                double value = Double.parseDouble(values[i]);
                int low = across ? 0 : 1;
                box[low] = Math.min(box[low], value);
                box[low + 2] = Math.max(box[low + 2], value);
            }
        }
        return new Box("", box[0], box[1], box[2], box[3]);
    }

    /** Holds what every picture keeps: letters large enough, inside the picture, and on no other letter. */
    void isLegible() {
        var texts = picture.getElementsByTagName("text");
        for (int i = 0; i < texts.getLength(); i++) {
            assertThat(number((Element) texts.item(i), "font-size")).isGreaterThanOrEqualTo(LEAST_TEXT);
        }
        List<Box> boxes = texts();
        for (int i = 0; i < boxes.size(); i++) {
            Box box = boxes.get(i);
            assertThat(box.left()).as(box.words() + " at the left").isGreaterThanOrEqualTo(-0.1);
            assertThat(box.right()).as(box.words() + " at the right").isLessThanOrEqualTo(width() + 0.1);
            assertThat(box.top()).as(box.words() + " at the top").isGreaterThanOrEqualTo(-0.1);
            assertThat(box.bottom()).as(box.words() + " at the bottom").isLessThanOrEqualTo(height() + 0.1);
            for (Box other : boxes.subList(0, i)) {
                assertThat(box.touches(other)).as(box + " lies on " + other).isFalse();
            }
        }
    }
}
