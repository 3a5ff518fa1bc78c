package org.sunder.picture;

import java.util.List;
import java.util.function.UnaryOperator;
import org.jspecify.annotations.Nullable;
import org.sunder.engine.planning.Evidence;

/**
 * An airframe from the side: parts and the cuts where they part, from the tip aft. Lengths are metres.
 *
 * @param name the airframe's
 * @param elements parts and cuts, fore to aft
 */
public record SideView(String name, List<Element> elements) {

    /** Copies the list. */
    public SideView {
        elements = List.copyOf(elements);
    }

    /** A part or a cut. */
    public sealed interface Element permits Part, Cut {}

    /** Kinds of part. */
    public enum Kind {
        NOSE("nose"),
        TUBE("tube"),
        BAY("bay"),
        TAIL("motor end");

        private final String word;

        Kind(String word) {
            this.word = word;
        }

        @Override
        public String toString() {
            return word;
        }
    }

    /**
     * The radius of a part at a distance from its fore end.
     *
     * @param x distance from the fore end
     * @param radius of the outside
     */
    public record Station(double x, double radius) {}

    /**
     * A part.
     *
     * @param kind what it is
     * @param outline its outside, fore to aft; at least two stations
     * @param described whether a setup describes it; one that none describes is drawn plain
     */
    public record Part(Kind kind, List<Station> outline, boolean described) implements Element {

        /** Copies the list. */
        public Part {
            outline = List.copyOf(outline);
        }

        /** A part of one radius. */
        public static Part straight(Kind kind, double length, double radius, boolean described) {
            return new Part(kind, List.of(new Station(0, radius), new Station(length, radius)), described);
        }

        /** How long it is. */
        public double length() {
            return outline.get(outline.size() - 1).x();
        }
    }

    /**
     * A joint.
     *
     * @param id of the joint
     * @param name of the joint
     * @param evidence how far its tests support a flight charge
     * @param inside what is pushed in across it, or null where nothing is described
     * @param open whether it is drawn opened
     * @param address what a press on it leads to, or null
     */
    public record Cut(
            String id,
            String name,
            Evidence evidence,
            @Nullable Inside inside,
            boolean open,
            @Nullable String address) implements Element {}

    /**
     * A bay, coupler or shoulder that bridges a joint.
     *
     * @param length how far it is pushed in
     * @param radius of its outside
     * @param ofForePart whether it stays with the part forward of the joint when that opens
     */
    public record Inside(double length, double radius, boolean ofForePart) {}

    /** The same with one joint opened and no other. */
    public SideView opened(String id) {
        return each(cut -> new Cut(
                cut.id(), cut.name(), cut.evidence(), cut.inside(), cut.id().equals(id), cut.address()));
    }

    /** The same with a link at each joint. */
    public SideView linked(UnaryOperator<String> addressOfJoint) {
        return each(cut -> new Cut(
                cut.id(), cut.name(), cut.evidence(), cut.inside(), cut.open(), addressOfJoint.apply(cut.id())));
    }

    /** Its joints, fore to aft. */
    public List<Cut> cuts() {
        return elements.stream()
                .filter(Cut.class::isInstance)
                .map(Cut.class::cast)
                .toList();
    }

    /** Its parts, fore to aft. */
    public List<Part> parts() {
        return elements.stream()
                .filter(Part.class::isInstance)
                .map(Part.class::cast)
                .toList();
    }

    private SideView each(UnaryOperator<Cut> change) {
        return new SideView(
                name,
                elements.stream()
                        .map(element -> element instanceof Cut cut ? change.apply(cut) : element)
                        .toList());
    }
}
