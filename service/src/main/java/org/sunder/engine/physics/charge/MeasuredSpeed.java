package org.sunder.engine.physics.charge;

import java.math.BigDecimal;
import java.math.RoundingMode;
import org.sunder.engine.physics.Faults;
import org.sunder.engine.physics.Range;
import org.sunder.engine.physics.UnsoundSetupException;
import org.sunder.engine.physics.flight.StandardAtmosphere;
import org.sunder.engine.quantity.Length;

/**
 * A separation speed measured on the ground, of the moving part against the one that stayed.
 *
 * @param speed m/s
 * @param sd its standard deviation, m/s
 */
public record MeasuredSpeed(double speed, double sd) {

    private static final double LENGTH_UNCERTAINTY = 0.05; // relative, read off a picture or paced out; own choice
    private static final double FRAME_UNCERTAINTY = 0.41; // frames, 1/√6: two instants, each uniform within a frame

    private static final double AIM_UNCERTAINTY =
            0.035; // radians, 2°: a joint on a stand is hardly more level; own choice
    private static final double LEAST_PERCENT = 3; // finer than this no reading is believed; own choice

    private static final Range DISTANCE = new Range(0.001, 200, "1 mm to 200 m");
    private static final Range FRAMES = new Range(1, 100_000, "1 to 100000");
    private static final Range FRAME_RATE = new Range(10, 100_000, "10 to 100000 per second");
    private static final Range HEIGHT = new Range(0.05, 20, "50 mm to 20 m");

    /**
     * From a video: v = distance · rate / frames.
     *
     * @param distance how far the part moved
     * @param frames over how many frames
     * @param framesPerSecond true rate of recording, not of playing back
     * @throws UnsoundSetupException with every fault
     */
    public static MeasuredSpeed ofFrames(Length distance, int frames, double framesPerSecond) {
        Faults faults = new Faults();
        faults.range("distance", distance, DISTANCE);
        faults.range("frames", frames, FRAMES);
        faults.range("framesPerSecond", framesPerSecond, FRAME_RATE);
        faults.throwIfAny();
        double speed = distance.metres() * framesPerSecond / frames;
        double counting = FRAME_UNCERTAINTY / frames;
        return new MeasuredSpeed(speed, speed * StrictMath.hypot(LENGTH_UNCERTAINTY, counting));
    }

    /** Its standard deviation in percent of it, to a tenth; never less than 3. */
    public BigDecimal percent() {
        return BigDecimal.valueOf(Math.max(LEAST_PERCENT, 100 * sd / speed)).setScale(1, RoundingMode.HALF_UP);
    }

    /**
     * From how far a part flew, thrown level: v = distance · √(g/(2·height)). Thrown a little upward it flies longer, by v·sin(angle)/g.
     * Air drag makes it read low.
     *
     * @param distance level distance to where it first touched the ground
     * @param height of the joint above that ground
     * @throws UnsoundSetupException with every fault
     */
    public static MeasuredSpeed ofThrow(Length distance, Length height) {
        Faults faults = new Faults();
        faults.range("distance", distance, DISTANCE);
        faults.range("height", height, HEIGHT);
        faults.throwIfAny();
        double fall = Math.sqrt(2 * height.metres() / StandardAtmosphere.GRAVITY);
        double speed = distance.metres() / fall;
        double lengths = StrictMath.hypot(LENGTH_UNCERTAINTY, LENGTH_UNCERTAINTY / 2);
        double aim = AIM_UNCERTAINTY * speed / (StandardAtmosphere.GRAVITY * fall);
        return new MeasuredSpeed(speed, speed * StrictMath.hypot(lengths, aim));
    }
}
