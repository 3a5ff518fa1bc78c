package org.sunder.groundtest;

import java.util.UUID;
import org.sunder.engine.learning.CorrectionFactor;
import org.sunder.engine.learning.OutcomeProbabilities;

/** A test about to enter the log. */
public record NewTest(
        Occasion occasion,
        UUID jointId,
        UUID setupId,
        int setupRevision,
        Report report,
        OutcomeProbabilities forecast,
        CorrectionFactor correctionAfter) {}
