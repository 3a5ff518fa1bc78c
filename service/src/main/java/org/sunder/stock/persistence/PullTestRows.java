package org.sunder.stock.persistence;

import java.util.Collection;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import org.springframework.data.jpa.repository.JpaRepository;

/** Pull tests by flyer. */
interface PullTestRows extends JpaRepository<PullTestRow, UUID> {

    List<PullTestRow> findByFlyerIdAndBatchIdInOrderByBatchIdAscSequenceAsc(UUID flyerId, Collection<UUID> batches);

    Optional<PullTestRow> findByFlyerIdAndBatchIdAndSequence(UUID flyerId, UUID batchId, int sequence);
}
