package org.sunder;

import java.lang.annotation.ElementType;
import java.lang.annotation.Retention;
import java.lang.annotation.RetentionPolicy;
import java.lang.annotation.Target;
import org.junit.jupiter.api.condition.EnabledIfSystemProperty;

/**
 * A test that takes long for what a shorter one beside it shows in its main line, or for what is met once in the life of a
 * service: run where a run may take its time, as in CI.
 */
@Target({ElementType.METHOD, ElementType.TYPE})
@Retention(RetentionPolicy.RUNTIME)
@EnabledIfSystemProperty(
        named = "sunder.test.thorough",
        matches = "true",
        disabledReason = "runs with -Dsunder.test.thorough=true")
public @interface InThoroughRuns {}
