package org.sunder.airframe.persistence;

import java.time.Instant;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import org.springframework.data.domain.Limit;
import org.springframework.data.jpa.repository.JpaRepository;
import org.springframework.data.jpa.repository.Query;

/** Airframes by flyer. */
interface AirframeRows extends JpaRepository<AirframeRow, UUID> {

    Optional<AirframeRow> findByFlyerIdAndId(UUID flyerId, UUID id);

    List<AirframeRow> findByFlyerIdOrderById(UUID flyerId);

    @Query("""
            select a from AirframeRow a
            where a.flyerId = :flyer and a.archivedAt is null
              and a.createdAt <= :at and (a.createdAt < :at or a.id < :id)
            order by a.flyerId, a.createdAt desc, a.id desc
            """)
    List<AirframeRow> after(UUID flyer, Instant at, UUID id, Limit limit);

    @Query("""
            select a from AirframeRow a
            where a.flyerId = :flyer and a.archivedAt is not null
              and a.createdAt <= :at and (a.createdAt < :at or a.id < :id)
            order by a.flyerId, a.createdAt desc, a.id desc
            """)
    List<AirframeRow> putAwayAfter(UUID flyer, Instant at, UUID id, Limit limit);
}
