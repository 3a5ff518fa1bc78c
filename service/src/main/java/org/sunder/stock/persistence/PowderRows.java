package org.sunder.stock.persistence;

import java.time.Instant;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import org.springframework.data.domain.Limit;
import org.springframework.data.jpa.repository.JpaRepository;
import org.springframework.data.jpa.repository.Query;

/** Powders by flyer. */
interface PowderRows extends JpaRepository<PowderRow, UUID> {

    Optional<PowderRow> findByFlyerIdAndId(UUID flyerId, UUID id);

    Optional<PowderRow> findByFlyerIdAndNameInUse(UUID flyerId, String name);

    @Query("""
            select p from PowderRow p
            where p.flyerId = :flyer and p.archivedAt is null
              and p.createdAt <= :at and (p.createdAt < :at or p.id < :id)
            order by p.flyerId, p.createdAt desc, p.id desc
            """)
    List<PowderRow> after(UUID flyer, Instant at, UUID id, Limit limit);
}
