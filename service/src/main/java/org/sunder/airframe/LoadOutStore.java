package org.sunder.airframe;

import java.util.List;
import java.util.Optional;
import java.util.UUID;

/** Where a flyer's load-outs are kept. */
public interface LoadOutStore {

    InstalledLoadOut add(UUID flyer, UUID airframeId, LoadOutSheet sheet);

    InstalledLoadOut change(UUID flyer, UUID id, LoadOutSheet sheet);

    void remove(UUID flyer, UUID id);

    Optional<InstalledLoadOut> find(UUID flyer, UUID id);

    /** Load-outs of an airframe, oldest first. */
    List<InstalledLoadOut> of(UUID flyer, UUID airframeId);
}
