package org.sunder.groundtest.persistence;

import java.time.Instant;
import java.util.Collection;
import java.util.List;
import java.util.UUID;
import org.springframework.data.jpa.repository.JpaRepository;
import org.springframework.data.jpa.repository.Query;

/** Voids by flyer. */
interface VoidRows extends JpaRepository<VoidRow, UUID> {

    List<VoidRow> findByFlyerIdOrderByTestIdAscSequenceAsc(UUID flyerId);

    @Query("""
            select v from VoidRow v join GroundTestRow t on t.flyerId = v.flyerId and t.id = v.testId
            where v.flyerId = :flyer and t.jointId in :joints
            order by v.testId, v.sequence
            """)
    List<VoidRow> ofJoints(UUID flyer, Collection<UUID> joints);

    /** Voids of the firings of a joint in a span of time: no list of ids, which would be translated anew each time. */
    @Query("""
            select v from VoidRow v join GroundTestRow t on t.flyerId = v.flyerId and t.id = v.testId
            where v.flyerId = :flyer and t.jointId = :joint and t.occasion = :occasion and t.firedAt between :from and :to
            order by v.testId, v.sequence
            """)
    List<VoidRow> ofPage(UUID flyer, UUID joint, String occasion, Instant from, Instant to);

    List<VoidRow> findByFlyerIdAndTestIdOrderBySequenceAsc(UUID flyerId, UUID test);
}
