package org.sunder.postgres;

import org.junit.jupiter.api.extension.ConditionEvaluationResult;
import org.junit.jupiter.api.extension.ExecutionCondition;
import org.junit.jupiter.api.extension.ExtensionContext;
import org.sunder.TestDatabase;

/** Skips a test that runs on PostgreSQL where no container engine is at hand, and says so; in CI that is a failure. */
public final class NeedsContainers implements ExecutionCondition {

    @Override
    public ConditionEvaluationResult evaluateExecutionCondition(ExtensionContext context) {
        boolean needed = TestDatabase.onPostgres()
                || context.getTestClass()
                        .map(type -> type.isAnnotationPresent(PostgresTest.class))
                        .orElse(false);
        if (!needed || PostgresServer.available()) {
            return ConditionEvaluationResult.enabled("what it needs is there");
        }
        if (System.getenv("CI") != null || System.getenv("SUNDER_TEST_POSTGRES_IMAGE") != null) {
            throw new IllegalStateException("CI must run the tests on PostgreSQL, but there is no container engine");
        }
        return ConditionEvaluationResult.disabled(
                "no container engine (Docker) on this machine: the tests on PostgreSQL are skipped");
    }
}
