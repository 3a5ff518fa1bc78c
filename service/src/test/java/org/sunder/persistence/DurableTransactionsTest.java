package org.sunder.persistence;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.mockito.ArgumentMatchers.any;
import static org.mockito.ArgumentMatchers.anyString;
import static org.mockito.Mockito.doNothing;
import static org.mockito.Mockito.doThrow;
import static org.mockito.Mockito.mock;
import static org.mockito.Mockito.never;
import static org.mockito.Mockito.times;
import static org.mockito.Mockito.verify;

import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.springframework.dao.DataAccessResourceFailureException;
import org.springframework.jdbc.core.JdbcTemplate;
import org.springframework.jdbc.datasource.DriverManagerDataSource;
import org.springframework.jdbc.support.MetaDataAccessException;
import org.springframework.transaction.PlatformTransactionManager;
import org.sunder.problem.ProblemException;
import org.sunder.problem.ProblemType;

/** What is said of a change that was committed and could not be brought to disk. */
class DurableTransactionsTest {

    private final PlatformTransactionManager manager = mock(PlatformTransactionManager.class);
    private final JdbcTemplate jdbc = mock(JdbcTemplate.class);
    private DurableTransactions transactions;

    @BeforeEach
    void onAnEmbeddedDatabase() throws MetaDataAccessException {
        transactions = new DurableTransactions(
                manager, new DriverManagerDataSource("jdbc:h2:mem:checkpoint"), jdbc, mock(StorageRoom.class));
    }

    @Test
    void aCheckpointThatFailsAfterTheCommitDoesNotSayThatNothingWasStored() {
        doThrow(new DataAccessResourceFailureException("disk")).when(jdbc).execute(anyString());
        assertThatThrownBy(() -> transactions.commit(() -> "stored"))
                .isInstanceOfSatisfying(ProblemException.class, e -> {
                    assertThat(e.type()).isEqualTo(ProblemType.STORAGE_UNAVAILABLE);
                    assertThat(e).hasMessageContaining("is stored").hasMessageContaining("Idempotency-Key");
                });
        verify(manager).commit(any());
    }

    @Test
    void whatIsAskedForAgainIsToldOnlyOnceItIsOnDisk() {
        transactions.catchUp();
        verify(jdbc, never()).execute(anyString());
        doThrow(new DataAccessResourceFailureException("disk")).when(jdbc).execute(anyString());
        assertThatThrownBy(() -> transactions.commit(() -> "stored")).isInstanceOf(ProblemException.class);
        assertThatThrownBy(() -> transactions.catchUp()).isInstanceOf(ProblemException.class);
        doNothing().when(jdbc).execute(anyString());
        transactions.catchUp();
        transactions.catchUp();
        verify(jdbc, times(3)).execute("CHECKPOINT SYNC");
    }
}
