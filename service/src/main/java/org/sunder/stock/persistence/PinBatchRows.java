package org.sunder.stock.persistence;

import java.time.Instant;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import org.springframework.data.domain.Limit;
import org.springframework.data.jpa.repository.JpaRepository;
import org.springframework.data.jpa.repository.Query;

/** Pin batches by flyer. */
interface PinBatchRows extends JpaRepository<PinBatchRow, UUID> {

    Optional<PinBatchRow> findByFlyerIdAndId(UUID flyerId, UUID id);

    @Query("""
            select b from PinBatchRow b
            where b.flyerId = :flyer and b.archivedAt is null
              and b.createdAt <= :at and (b.createdAt < :at or b.id < :id)
            order by b.flyerId, b.createdAt desc, b.id desc
            """)
    List<PinBatchRow> after(UUID flyer, Instant at, UUID id, Limit limit);
}
