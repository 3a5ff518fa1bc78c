package org.sunder.groundtest.persistence;

import java.time.Instant;
import java.util.Collection;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import org.springframework.data.domain.Limit;
import org.springframework.data.jpa.repository.JpaRepository;
import org.springframework.data.jpa.repository.Query;

/** Ground tests by flyer. */
interface GroundTestRows extends JpaRepository<GroundTestRow, UUID> {

    Optional<GroundTestRow> findByFlyerIdAndId(UUID flyerId, UUID id);

    List<GroundTestRow> findByFlyerIdOrderByFiredAtAscIdAsc(UUID flyerId);

    List<GroundTestRow> findByFlyerIdAndJointIdInOrderByFiredAtAscIdAsc(UUID flyerId, Collection<UUID> joints);

    @Query("""
            select t from GroundTestRow t
            where t.flyerId = :flyer and t.jointId = :joint and t.occasion = :occasion
              and t.firedAt <= :at and (t.firedAt < :at or t.id < :id)
            order by t.flyerId, t.jointId, t.occasion, t.firedAt desc, t.id desc
            """)
    List<GroundTestRow> after(UUID flyer, UUID joint, String occasion, Instant at, UUID id, Limit limit);
}
