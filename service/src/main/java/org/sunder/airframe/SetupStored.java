package org.sunder.airframe;

import java.util.UUID;

/**
 * Told inside the transaction in which a flyer's new setup is stored.
 *
 * @param flyer whose setup
 */
public record SetupStored(UUID flyer) {}
