package org.sunder.engine.planning;

/**
 * Why a charge is not allowed.
 *
 * @param safeguard name of the safeguard, in kebab case
 * @param reason one plain sentence
 */
public record Rejection(String safeguard, String reason) {}
