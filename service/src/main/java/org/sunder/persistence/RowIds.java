package org.sunder.persistence;

import java.util.UUID;
import org.hibernate.id.uuid.UuidVersion7Strategy;

/** Ids of new rows: UUID version 7 (RFC 9562), so that they sort by the time they were made. */
public final class RowIds {

    private RowIds() {}

    /** A new id. */
    public static UUID next() {
        return UuidVersion7Strategy.INSTANCE.generateUuid(null);
    }
}
