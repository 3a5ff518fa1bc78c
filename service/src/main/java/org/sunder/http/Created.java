package org.sunder.http;

/**
 * What was created.
 *
 * @param location path of the new resource
 * @param entityTag its tag
 * @param body the answer
 */
public record Created(String location, String entityTag, Object body) {}
