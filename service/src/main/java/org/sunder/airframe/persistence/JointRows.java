package org.sunder.airframe.persistence;

import java.util.List;
import java.util.Optional;
import java.util.UUID;
import org.springframework.data.jpa.repository.JpaRepository;

/** Joints by flyer. */
interface JointRows extends JpaRepository<JointRow, UUID> {

    Optional<JointRow> findByFlyerIdAndId(UUID flyerId, UUID id);

    List<JointRow> findByFlyerIdAndAirframeIdOrderById(UUID flyerId, UUID airframeId);

    List<JointRow> findByFlyerIdOrderById(UUID flyerId);
}
