package org.sunder.engine.physics.packing;

import java.util.ArrayList;
import java.util.List;
import org.sunder.engine.physics.Solids;
import org.sunder.engine.physics.cavity.Cavity;

/** Stacks a load-out's items in a cavity, from the joint inwards and from the far end outwards. */
final class Placement {

    private static final double SLACK = 1e-6; // m, rounding of stated lengths

    private final Cavity cavity;
    private double near;
    private double far;
    private boolean roomy = true;

    private Placement(Cavity cavity, double start) {
        this.cavity = cavity;
        this.near = start;
        this.far = cavity.depth();
    }

    /** Of a load-out in what lies deeper than {@code start} metres from the joint plane. */
    static LoadOutFit of(Cavity cavity, double start, LoadOut loadOut) {
        Placement placement = new Placement(cavity, start);
        List<ItemFit> items = new ArrayList<>();
        for (PackedItem item : loadOut.items()) {
            items.add(placement.place(item));
        }
        double envelopes =
                loadOut.items().stream().mapToDouble(PackedItem::envelope).sum();
        double volumeLeft = cavity.volumeBetween(start, cavity.depth()) - envelopes;
        double lengthLeft = placement.far - placement.near;
        double rounding = SLACK * Solids.disc(2 * cavity.openingRadius());
        boolean fits = placement.roomy && lengthLeft >= -SLACK && volumeLeft >= -rounding;
        return fits
                ? new LoadOutFit(loadOut.name(), items, Math.max(0, lengthLeft), Math.max(0, volumeLeft), true)
                : new LoadOutFit(loadOut.name(), items, lengthLeft, volumeLeft, false);
    }

    private ItemFit place(PackedItem item) {
        boolean atJoint = item.place() == PackedItem.Place.JOINT;
        double length = item.soft() ? softLength(item, atJoint) : item.length().metres();
        double from = atJoint ? near : far - length;
        double to = atJoint ? near + length : far;
        if (atJoint) {
            near = to;
        } else {
            far = from;
        }
        double clearance = cavity.narrowest(Math.max(0, from), Math.min(to, cavity.depth()))
                - item.diameter().metres() / 2;
        boolean inside = from >= -SLACK && to <= cavity.depth() + SLACK && far - near >= -SLACK;
        boolean fits = inside && (item.soft() || clearance >= -SLACK);
        roomy &= fits;
        return new ItemFit(item.name(), from, to, clearance, fits);
    }

    /**
     * A soft item spreads to the wall where it is wider than the cavity, and gets longer by as much. What finds no room in the
     * cavity reaches over at its packed width.
     */
    private double softLength(PackedItem item, boolean atJoint) {
        double radius = item.diameter().metres() / 2;
        double shortest = 0;
        double longest = Math.max(0, far - near);
        double roomless = item.envelope() - offered(longest, radius, atJoint);
        if (roomless > 0) {
            return longest + roomless / Solids.disc(item.diameter().metres());
        }
        while (longest - shortest > SLACK / 10) {
            double middle = (shortest + longest) / 2;
            if (offered(middle, radius, atJoint) < item.envelope()) {
                shortest = middle;
            } else {
                longest = middle;
            }
        }
        return longest;
    }

    private double offered(double length, double radius, boolean atJoint) {
        return atJoint
                ? cavity.volumeWithin(near, near + length, radius)
                : cavity.volumeWithin(far - length, far, radius);
    }
}
