package org.sunder.engine.physics;

/** Elementary areas and volumes, in metres. */
public final class Solids {

    private Solids() {}

    /** Area in square metres of a circle of that diameter in metres. */
    public static double disc(double diameter) {
        return Math.PI / 4 * diameter * diameter;
    }

    /** Volume in cubic metres of a cylinder of that radius and length in metres. */
    public static double cylinder(double radius, double length) {
        return Math.PI * radius * radius * length;
    }
}
