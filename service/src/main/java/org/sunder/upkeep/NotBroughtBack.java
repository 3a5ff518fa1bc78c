package org.sunder.upkeep;

import java.io.IOException;
import java.nio.file.Path;

/** A database whose change was cut off and whose copy cannot be put back. */
class NotBroughtBack extends RuntimeException {

    /**
     * Says what is in the way.
     *
     * @param folder where the mark of the change stands
     * @param cause what went wrong
     */
    NotBroughtBack(Path folder, IOException cause) {
        super(
                "setting sunder.data-folder: a change of the tables in " + folder + " was cut off, and the copy made"
                        + " before it cannot be put back: " + cause + ".",
                cause);
    }
}
