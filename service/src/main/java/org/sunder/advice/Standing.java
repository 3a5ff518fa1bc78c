package org.sunder.advice;

import org.sunder.airframe.Joint;
import org.sunder.engine.learning.posterior.CorrectionFactor;
import org.sunder.engine.planning.EvidenceReport;

/**
 * Where a joint stands.
 *
 * @param joint the joint
 * @param tests counted firings of it
 * @param correction learned factor on the handbook charge, in the setup in force
 * @param evidence how far its tests support a flight charge
 */
public record Standing(Joint joint, int tests, CorrectionFactor correction, EvidenceReport evidence) {}
