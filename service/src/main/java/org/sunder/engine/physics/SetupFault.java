package org.sunder.engine.physics;

/**
 * One thing wrong with a setup.
 *
 * @param path where, as record components, e.g. {@code contents[1].depth}
 * @param value what was given
 * @param detail what is wrong with it
 * @param allowed what is allowed
 */
public record SetupFault(String path, String value, String detail, String allowed) {}
