package org.sunder.engine.physics;

/**
 * Something a person should know about a setup that can be computed.
 *
 * @param code stable kebab-case word
 * @param text one or two sentences
 */
public record Warning(String code, String text) {}
