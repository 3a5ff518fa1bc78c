package org.sunder.airframe.persistence;

import java.time.Clock;
import java.time.Instant;
import java.time.temporal.ChronoUnit;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import org.springframework.context.ApplicationEventPublisher;
import org.springframework.data.domain.Limit;
import org.springframework.stereotype.Repository;
import org.springframework.transaction.annotation.Transactional;
import org.sunder.airframe.Airframe;
import org.sunder.airframe.AirframeDetails;
import org.sunder.airframe.AirframeStore;
import org.sunder.airframe.DeploymentEvent;
import org.sunder.airframe.Joint;
import org.sunder.airframe.Setup;
import org.sunder.airframe.SetupSheet;
import org.sunder.airframe.SetupStored;
import org.sunder.persistence.FleetVersions;
import org.sunder.persistence.RowIds;
import org.sunder.web.Cursor;

/** Airframes, joints and setups in tables. */
@Repository
@Transactional
class JpaAirframeStore implements AirframeStore {

    private final AirframeRows airframes;
    private final JointRows joints;
    private final SetupRows setups;
    private final SheetDocuments documents;
    private final FleetVersions versions;
    private final ApplicationEventPublisher events;
    private final Clock clock;

    JpaAirframeStore(
            AirframeRows airframes,
            JointRows joints,
            SetupRows setups,
            SheetDocuments documents,
            FleetVersions versions,
            ApplicationEventPublisher events,
            Clock clock) {
        this.airframes = airframes;
        this.joints = joints;
        this.setups = setups;
        this.documents = documents;
        this.versions = versions;
        this.events = events;
        this.clock = clock;
    }

    @Override
    public Airframe add(UUID flyer, AirframeDetails details) {
        versions.advance(flyer);
        return airframes
                .saveAndFlush(new AirframeRow(RowIds.next(), flyer, details, now()))
                .airframe();
    }

    @Override
    public Airframe change(UUID flyer, UUID id, AirframeDetails details) {
        versions.advance(flyer);
        AirframeRow row = airframes.findByFlyerIdAndId(flyer, id).orElseThrow();
        row.describe(details);
        return airframes.saveAndFlush(row).airframe();
    }

    @Override
    public void archive(UUID flyer, UUID id) {
        versions.advance(flyer);
        AirframeRow row = airframes.findByFlyerIdAndId(flyer, id).orElseThrow();
        row.archivedAt = now();
        airframes.saveAndFlush(row);
    }

    @Override
    public Airframe bringBack(UUID flyer, UUID id) {
        versions.advance(flyer);
        AirframeRow row = airframes.findByFlyerIdAndId(flyer, id).orElseThrow();
        row.archivedAt = null;
        return airframes.saveAndFlush(row).airframe();
    }

    @Override
    public void removeAirframe(UUID flyer, UUID id) {
        versions.advance(flyer);
        airframes.delete(airframes.findByFlyerIdAndId(flyer, id).orElseThrow());
        airframes.flush();
    }

    @Override
    public void removeJoint(UUID flyer, UUID id) {
        versions.advance(flyer);
        setups.removeOf(flyer, id);
        joints.delete(joints.findByFlyerIdAndId(flyer, id).orElseThrow());
        joints.flush();
    }

    @Override
    public Optional<Airframe> findAirframe(UUID flyer, UUID id) {
        return airframes.findByFlyerIdAndId(flyer, id).map(AirframeRow::airframe);
    }

    @Override
    public List<Airframe> airframesAfter(UUID flyer, Cursor cursor, int limit) {
        return airframes.after(flyer, cursor.at(), cursor.id(), Limit.of(limit)).stream()
                .map(AirframeRow::airframe)
                .toList();
    }

    @Override
    public List<Airframe> putAwayAfter(UUID flyer, Cursor cursor, int limit) {
        return airframes.putAwayAfter(flyer, cursor.at(), cursor.id(), Limit.of(limit)).stream()
                .map(AirframeRow::airframe)
                .toList();
    }

    @Override
    public List<Airframe> allAirframes(UUID flyer) {
        return airframes.findByFlyerIdOrderById(flyer).stream()
                .map(AirframeRow::airframe)
                .toList();
    }

    @Override
    public Joint addJoint(UUID flyer, UUID airframeId, String name, DeploymentEvent event, SetupSheet sheet) {
        versions.advance(flyer);
        JointRow row = joints.saveAndFlush(new JointRow(RowIds.next(), flyer, airframeId, name, event, now()));
        saveSetup(flyer, row.getId(), 1, sheet);
        return row.joint();
    }

    @Override
    public Optional<Joint> findJoint(UUID flyer, UUID id) {
        return joints.findByFlyerIdAndId(flyer, id).map(JointRow::joint);
    }

    @Override
    public List<Joint> jointsOf(UUID flyer, UUID airframeId) {
        return joints.findByFlyerIdAndAirframeIdOrderById(flyer, airframeId).stream()
                .map(JointRow::joint)
                .toList();
    }

    @Override
    public List<Joint> allJoints(UUID flyer) {
        return joints.findByFlyerIdOrderById(flyer).stream()
                .map(JointRow::joint)
                .toList();
    }

    @Override
    public Setup addSetup(UUID flyer, UUID jointId, SetupSheet sheet) {
        versions.advance(flyer);
        JointRow joint = joints.findByFlyerIdAndId(flyer, jointId).orElseThrow();
        joint.currentRevision++;
        joints.saveAndFlush(joint);
        return saveSetup(flyer, jointId, joint.currentRevision, sheet);
    }

    @Override
    public List<Setup> setupsOf(UUID flyer, UUID jointId) {
        return setups.findByFlyerIdAndJointIdOrderByRevisionDesc(flyer, jointId).stream()
                .map(this::setup)
                .toList();
    }

    @Override
    public Optional<Setup> findSetup(UUID flyer, UUID jointId, int revision) {
        return setups.findByFlyerIdAndJointIdAndRevision(flyer, jointId, revision)
                .map(this::setup);
    }

    @Override
    public List<Setup> setupsInForce(UUID flyer, UUID airframeId) {
        return setups.inForce(flyer, airframeId).stream().map(this::setup).toList();
    }

    @Override
    public List<Setup> allSetups(UUID flyer) {
        return setups.findByFlyerIdOrderByJointIdAscRevisionAsc(flyer).stream()
                .map(this::setup)
                .toList();
    }

    private Setup saveSetup(UUID flyer, UUID jointId, int revision, SetupSheet sheet) {
        String document = documents.write(sheet);
        events.publishEvent(new SetupStored(flyer));
        return setup(setups.saveAndFlush(new SetupRow(RowIds.next(), flyer, jointId, revision, document, now())));
    }

    private Setup setup(SetupRow row) {
        return documents
                .find(row.document, SetupSheet.class)
                .map(sheet -> new Setup(row.getId(), row.jointId, row.revision, sheet, row.createdAt, null))
                .orElseGet(() -> {
                    String finding = "Revision " + row.revision + " of this setup cannot be read as it is stored.";
                    SetupSheet nothing = SetupSheet.unreadable(finding);
                    return new Setup(row.getId(), row.jointId, row.revision, nothing, row.createdAt, finding);
                });
    }

    /** Microseconds: what both databases keep. */
    private Instant now() {
        return clock.instant().truncatedTo(ChronoUnit.MICROS);
    }
}
