package org.sunder.airframe.persistence;

import java.util.List;
import java.util.Optional;
import java.util.UUID;
import org.springframework.data.jpa.repository.JpaRepository;

/** Load-outs by flyer. */
interface LoadOutRows extends JpaRepository<LoadOutRow, UUID> {

    Optional<LoadOutRow> findByFlyerIdAndId(UUID flyerId, UUID id);

    List<LoadOutRow> findByFlyerIdAndAirframeIdOrderById(UUID flyerId, UUID airframeId);
}
