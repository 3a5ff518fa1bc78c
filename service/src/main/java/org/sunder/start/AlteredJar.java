package org.sunder.start;

import java.util.List;

/** The jar does not hold what it was built with. */
class AlteredJar extends RuntimeException {

    /**
     * Names what differs.
     *
     * @param differences each a file and what is wrong with it
     */
    AlteredJar(List<String> differences) {
        super(String.join(", ", differences));
    }
}
