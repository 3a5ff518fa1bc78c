package org.sunder.problem;

import java.util.List;

/** A change that may be stored: the database broke off where it can no longer be told, or could not say that it is on disk. */
public final class StorageUncertain extends ProblemException {

    static final String DETAIL =
            "The database broke off. A change may be stored or not: read it, or send it again with the same"
                    + " Idempotency-Key, which stores it once.";

    private static final String NOT_ON_DISK =
            "The change is stored, but the database could not say that it is on disk, so a power"
                    + " cut could still take it. Read it, or send it again with the same Idempotency-Key, which stores it once.";

    private StorageUncertain(String detail, Throwable cause) {
        super(ProblemType.STORAGE_UNAVAILABLE, detail, List.of());
        initCause(cause);
    }

    /** Committed, and then the disk could not be waited for. */
    public static StorageUncertain notOnDisk(Throwable cause) {
        return new StorageUncertain(NOT_ON_DISK, cause);
    }
}
