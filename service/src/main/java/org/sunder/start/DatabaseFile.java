package org.sunder.start;

import java.sql.SQLException;
import org.jspecify.annotations.Nullable;
import org.springframework.boot.diagnostics.AbstractFailureAnalyzer;
import org.springframework.boot.diagnostics.FailureAnalysis;

/** A database file that cannot be opened: said in words, not in a stack trace. */
class DatabaseFile extends AbstractFailureAnalyzer<SQLException> {

    private static final int ALREADY_OPEN = 90020; // H2's DATABASE_ALREADY_OPEN_1
    private static final int UNREADABLE = 90028; // IO_EXCEPTION_1
    private static final int UNREADABLE_FILE = 90031; // IO_EXCEPTION_2
    private static final int NOT_MADE = 90062; // FILE_CREATION_FAILED_1

    @Override
    protected @Nullable FailureAnalysis analyze(Throwable failure, SQLException cause) {
        return switch (cause.getErrorCode()) {
            case ALREADY_OPEN ->
                new FailureAnalysis(
                        "setting sunder.data-folder: its database is in use by another process, probably another"
                                + " Sunder in this folder.",
                        "Stop the other process, start in another folder, or set another data folder.",
                        failure);
            case UNREADABLE, UNREADABLE_FILE, NOT_MADE ->
                new FailureAnalysis(
                        "setting sunder.data-folder: the database there cannot be read and written: "
                                + cause.getMessage(),
                        "Give this process the right to write there, or set another data folder.",
                        failure);
            default -> null;
        };
    }
}
