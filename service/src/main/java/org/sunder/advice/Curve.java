package org.sunder.advice;

import java.util.List;
import org.sunder.engine.physics.charge.Ceiling;
import org.sunder.engine.quantity.Mass;
import org.sunder.groundtest.GroundTest;
import org.sunder.picture.CurvePicture;

/**
 * The chance of separating against the charge in the setup in force, and what was fired.
 *
 * @param airframe its name
 * @param joint its name
 * @param points along the charge, smallest first
 * @param marks every firing of the joint in the order fired, void ones too
 * @param handbookCharge what the formula asks for, kg
 * @param ceiling the charge never to be exceeded
 * @param measure step of charges
 * @param basis what it rests on
 */
public record Curve(
        String airframe,
        String joint,
        List<Point> points,
        List<Mark> marks,
        double handbookCharge,
        Ceiling ceiling,
        Mass measure,
        Basis basis) {

    /** Copies the lists. */
    public Curve {
        points = List.copyOf(points);
        marks = List.copyOf(marks);
    }

    /** Its points as a picture takes them. */
    public List<CurvePicture.Point> drawn() {
        return points.stream()
                .map(point -> new CurvePicture.Point(
                        Mass.ofKilograms(point.charge()).valueIn(measure.unit()).doubleValue(),
                        point.separated(),
                        point.low(),
                        point.high()))
                .toList();
    }

    /**
     * A point of the curve.
     *
     * @param charge kg
     * @param separated predictive chance of separating
     * @param low 5 % of the belief puts this joint's own chance below
     * @param high 5 % of the belief puts it above
     */
    public record Point(double charge, double separated, double low, double high) {}

    /**
     * A firing.
     *
     * @param test what was fired
     * @param charge charge in kg of the same ratio to the handbook charge in the setup in force; equal to what was fired
     *     where the setup is the same
     */
    public record Mark(GroundTest test, double charge) {}
}
