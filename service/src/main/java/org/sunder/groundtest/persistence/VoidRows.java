package org.sunder.groundtest.persistence;

import java.util.Collection;
import java.util.List;
import java.util.UUID;
import org.springframework.data.jpa.repository.JpaRepository;

/** Voids by flyer. */
interface VoidRows extends JpaRepository<VoidRow, UUID> {

    List<VoidRow> findByFlyerIdOrderByTestIdAscSequenceAsc(UUID flyerId);

    List<VoidRow> findByFlyerIdAndTestIdInOrderByTestIdAscSequenceAsc(UUID flyerId, Collection<UUID> tests);
}
