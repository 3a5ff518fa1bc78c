package org.sunder.access;

import java.util.UUID;
import org.springframework.stereotype.Component;

/** The flyer a request speaks for. On a laptop there is one, the owner of the data folder. */
@Component
public class CurrentFlyer {

    /** The flyer of a single-user service. */
    public static final UUID LOCAL = UUID.fromString("00000000-0000-7000-8000-000000000001");

    /** The flyer's id. */
    public UUID id() {
        return LOCAL;
    }
}
