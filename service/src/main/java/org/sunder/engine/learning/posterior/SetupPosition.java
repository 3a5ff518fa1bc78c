package org.sunder.engine.learning.posterior;

import org.sunder.engine.learning.model.AirframeLog;

/**
 * A setup's place in its airframe.
 *
 * @param airframe the airframe's log
 * @param joint index of the joint, −1 for a new one
 * @param setup index of the setup, −1 for a new one
 * @param inputSd relative standard deviation of the setup's handbook charge
 */
record SetupPosition(AirframeLog airframe, int joint, int setup, double inputSd) {}
