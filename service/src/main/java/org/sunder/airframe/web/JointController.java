package org.sunder.airframe.web;

import io.swagger.v3.oas.annotations.Operation;
import io.swagger.v3.oas.annotations.media.Content;
import io.swagger.v3.oas.annotations.media.Schema;
import io.swagger.v3.oas.annotations.responses.ApiResponse;
import io.swagger.v3.oas.annotations.tags.Tag;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import org.springframework.http.HttpHeaders;
import org.springframework.http.ResponseEntity;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.PutMapping;
import org.springframework.web.bind.annotation.RequestBody;
import org.springframework.web.bind.annotation.RequestHeader;
import org.springframework.web.bind.annotation.RestController;
import org.sunder.airframe.Airframes;
import org.sunder.airframe.Joint;
import org.sunder.airframe.JointRequest;
import org.sunder.airframe.Setup;
import org.sunder.airframe.SetupPhysics;
import org.sunder.airframe.SetupSheet;
import org.sunder.persistence.DurableTransactions;
import org.sunder.web.Created;
import org.sunder.web.EntityTags;
import org.sunder.web.IdempotentCreation;
import org.sunder.web.Page;

/** Joints and their setups over HTTP. */
@RestController
@Tag(name = "Joints and setups")
class JointController {

    private final Airframes airframes;
    private final SetupPhysics physics;
    private final IdempotentCreation creation;
    private final DurableTransactions transactions;

    JointController(
            Airframes airframes, SetupPhysics physics, IdempotentCreation creation, DurableTransactions transactions) {
        this.physics = physics;
        this.airframes = airframes;
        this.creation = creation;
        this.transactions = transactions;
    }

    @PostMapping("/api/airframes/{id}/joints")
    @Operation(
            operationId = "createJoint",
            summary = "Add a joint with its first setup",
            description = "Adds a place where two sections part. The setup must be sound: what is in the compartment"
                    + " must fit it.")
    @ApiResponse(
            responseCode = "201",
            description = "The joint was added.",
            content = @Content(schema = @Schema(implementation = JointView.class)))
    ResponseEntity<Object> create(
            @PathVariable UUID id,
            @RequestHeader(name = "Idempotency-Key", required = false) @Nullable String key,
            @RequestBody JointRequest body) {
        return creation.create(IdempotentCreation.scope("createJoint", id), key, body, () -> {
            Joint joint = airframes.addJoint(id, body.name(), body.event(), body.setup());
            return new Created("/api/joints/" + joint.id(), EntityTags.of(joint.version()), view(joint));
        });
    }

    @GetMapping("/api/airframes/{id}/joints")
    @Operation(
            operationId = "listJoints",
            summary = "List the joints of an airframe",
            description = "The joints of an airframe with the setups in force, oldest first.")
    Page<JointView> list(@PathVariable UUID id) {
        List<Joint> joints = airframes.jointsOf(id);
        Map<UUID, Setup> setups = airframes.setupsInForce(id);
        return new Page<>(
                joints.stream()
                        .map(joint -> view(joint, Objects.requireNonNull(setups.get(joint.id()))))
                        .toList(),
                null);
    }

    @GetMapping("/api/joints/{id}")
    @Operation(
            operationId = "getJoint",
            summary = "Read a joint",
            description = "A joint with the setup in force, and the ETag that a change of setup needs.")
    ResponseEntity<JointView> get(@PathVariable UUID id) {
        return answer(airframes.getJoint(id));
    }

    @PutMapping("/api/joints/{id}/setup")
    @Operation(
            operationId = "changeSetup",
            summary = "Change the setup of a joint",
            description = "Makes the next revision; earlier ones stay, and every test keeps pointing at its own."
                    + " Needs If-Match with the ETag of the joint.")
    ResponseEntity<JointView> changeSetup(
            @PathVariable UUID id,
            @RequestHeader(name = HttpHeaders.IF_MATCH, required = false) @Nullable String ifMatch,
            @RequestBody SetupSheet body) {
        return answer(transactions.commit(() -> {
            airframes.changeSetup(id, EntityTags.matching(ifMatch), body);
            return airframes.getJoint(id);
        }));
    }

    @GetMapping("/api/joints/{id}/setups")
    @Operation(
            operationId = "listSetups",
            summary = "List the setups of a joint",
            description = "Every revision, newest first.")
    Page<SetupView> setups(@PathVariable UUID id) {
        return new Page<>(
                airframes.setupsOf(id).stream()
                        .map(setup -> SetupView.of(setup, physics.find(setup)))
                        .toList(),
                null);
    }

    private ResponseEntity<JointView> answer(Joint joint) {
        return ResponseEntity.ok().eTag(EntityTags.of(joint.version())).body(view(joint));
    }

    private JointView view(Joint joint) {
        return view(joint, airframes.currentSetup(joint));
    }

    private JointView view(Joint joint, Setup setup) {
        return JointView.of(joint, setup, physics.find(setup));
    }
}
