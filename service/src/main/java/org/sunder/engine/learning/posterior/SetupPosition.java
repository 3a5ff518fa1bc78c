package org.sunder.engine.learning.posterior;

import java.util.OptionalInt;
import org.sunder.engine.learning.model.AirframeLog;

/**
 * Where in its airframe a setup stands.
 *
 * @param airframe the airframe's log
 * @param joint index of the joint; empty for a new one
 * @param setup index of the setup; empty for a new one
 * @param inputSd relative standard deviation of the setup's handbook charge
 */
record SetupPosition(AirframeLog airframe, OptionalInt joint, OptionalInt setup, double inputSd) {}
