package org.sunder.airframe.persistence;

import java.util.List;
import java.util.UUID;
import org.springframework.data.jpa.repository.JpaRepository;

/** Setups by flyer. */
interface SetupRows extends JpaRepository<SetupRow, UUID> {

    List<SetupRow> findByFlyerIdAndJointIdOrderByRevisionDesc(UUID flyerId, UUID jointId);

    List<SetupRow> findByFlyerIdOrderByJointIdAscRevisionAsc(UUID flyerId);
}
