package org.sunder.persistence;

import java.util.Objects;
import java.util.function.Supplier;
import javax.sql.DataSource;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;
import org.springframework.dao.DataAccessException;
import org.springframework.jdbc.core.JdbcTemplate;
import org.springframework.jdbc.support.MetaDataAccessException;
import org.springframework.stereotype.Component;
import org.springframework.transaction.PlatformTransactionManager;
import org.springframework.transaction.support.TransactionTemplate;
import org.sunder.problem.StorageUncertain;

/**
 * Commits so that what is acknowledged survives a power cut. PostgreSQL does so by itself; H2 writes at commit (with
 * WRITE_DELAY=0) but calls fsync only for CHECKPOINT SYNC.
 */
@Component
public class DurableTransactions {

    private static final Logger LOG = LoggerFactory.getLogger(DurableTransactions.class);

    private final TransactionTemplate transactions;
    private final JdbcTemplate jdbc;
    private final StorageRoom room;
    private final boolean embedded;
    private volatile boolean behind;

    DurableTransactions(PlatformTransactionManager manager, DataSource source, JdbcTemplate jdbc, StorageRoom room)
            throws MetaDataAccessException {
        this.transactions = new TransactionTemplate(manager);
        this.jdbc = jdbc;
        this.room = room;
        this.embedded = EmbeddedDatabase.isBehind(source);
    }

    /**
     * Runs the work in one transaction and returns after it is on disk.
     *
     * @param work what to do; an exception rolls everything back
     * @throws org.sunder.problem.ProblemException 503 where the disk is nearly full, and where the work is committed but the disk
     *     could not be waited for
     */
    public <T> T commit(Supplier<T> work) {
        room.require();
        T result = Objects.requireNonNull(transactions.execute(status -> work.get()));
        if (embedded) {
            onDisk();
        }
        return result;
    }

    /**
     * Returns after what was committed before is on disk, even where the disk could not be waited for at the time.
     *
     * @throws org.sunder.problem.ProblemException 503 where the disk can still not be waited for
     */
    public void catchUp() {
        if (behind) {
            onDisk();
        }
    }

    private void onDisk() {
        try {
            jdbc.execute("CHECKPOINT SYNC");
            behind = false;
        } catch (DataAccessException e) {
            behind = true;
            LOG.error("A change was committed and could not be brought to disk", e);
            throw StorageUncertain.notOnDisk(e);
        }
    }

    /** As {@link #commit}, for work that answers nothing. */
    public void run(Runnable work) {
        commit(() -> {
            work.run();
            return true;
        });
    }
}
