package org.sunder.problem;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.EOFException;
import java.sql.SQLException;
import org.hibernate.TransactionException;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.springframework.mock.web.MockHttpServletRequest;
import org.springframework.orm.jpa.JpaSystemException;

/** Which failures of the database are its absence. States: SQL standard, and PostgreSQL's manual, appendix A. */
class SqlFailuresTest {

    @ParameterizedTest
    @ValueSource(strings = {"08006", "08003", "53100", "53300", "57P01", "58030"})
    void aDatabaseThatIsAwayOrFullIsUnavailable(String state) {
        assertThat(SqlFailures.isUnavailable(new IllegalStateException(new SQLException("away", state))))
                .isTrue();
    }

    @ParameterizedTest
    @ValueSource(strings = {"23505", "23503", "22001", "42601", "40001"})
    void aRefusedStatementIsNot(String state) {
        assertThat(SqlFailures.isUnavailable(new IllegalStateException(new SQLException("refused", state))))
                .isFalse();
    }

    @ParameterizedTest
    @ValueSource(strings = {"HYT00", "55P03"})
    void aRowThatAnotherChangeHoldsIsToBeAskedForAgain(String state) {
        var held = new IllegalStateException(new SQLException("held", state));
        var answer = new ProblemAdvice().unforeseen(held, new MockHttpServletRequest("POST", "/api/airframes"));
        assertThat(answer).isNotNull();
        assertThat(answer.getStatusCode().value()).isEqualTo(503);
        assertThat(answer.getHeaders().getFirst("Retry-After")).isEqualTo("5");
    }

    @Test
    void aRollbackOnABrokenConnectionIsUnavailable() {
        var rollback = new TransactionException("Unable to rollback", new SQLException("Connection is closed"));
        assertThat(SqlFailures.isUnavailable(new JpaSystemException(rollback))).isTrue();
    }

    @Test
    void aFailureThatHasNothingToDoWithTheDatabaseIsNot() {
        assertThat(SqlFailures.isUnavailable(new IllegalStateException("other")))
                .isFalse();
    }

    @Test
    void aDatabaseThatHangsUpIsNotTakenForACallerThatDid() {
        var hungUp = new IllegalStateException(new SQLException("lost", "08006", new EOFException()));
        var answer = new ProblemAdvice().unforeseen(hungUp, new MockHttpServletRequest("GET", "/api/airframes"));
        assertThat(answer).isNotNull();
        assertThat(answer.getStatusCode().value()).isEqualTo(503);
    }
}
