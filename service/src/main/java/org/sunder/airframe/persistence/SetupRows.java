package org.sunder.airframe.persistence;

import java.util.List;
import java.util.Optional;
import java.util.UUID;
import org.springframework.data.jpa.repository.JpaRepository;
import org.springframework.data.jpa.repository.Modifying;
import org.springframework.data.jpa.repository.Query;

/** Setups by flyer. */
interface SetupRows extends JpaRepository<SetupRow, UUID> {

    List<SetupRow> findByFlyerIdAndJointIdOrderByRevisionDesc(UUID flyerId, UUID jointId);

    Optional<SetupRow> findByFlyerIdAndJointIdAndRevision(UUID flyerId, UUID jointId, int revision);

    /** The setups in force at the joints of an airframe. */
    @Query("""
            select s from SetupRow s join JointRow j
              on j.flyerId = s.flyerId and j.id = s.jointId and j.currentRevision = s.revision
            where j.flyerId = :flyer and j.airframeId = :airframe
            """)
    List<SetupRow> inForce(UUID flyer, UUID airframe);

    /** Setups are never changed, and go only with their joint. */
    @Modifying
    @Query(value = "delete from setup where flyer_id = :flyer and joint_id = :joint", nativeQuery = true)
    void removeOf(UUID flyer, UUID joint);

    List<SetupRow> findByFlyerIdOrderByJointIdAscRevisionAsc(UUID flyerId);
}
