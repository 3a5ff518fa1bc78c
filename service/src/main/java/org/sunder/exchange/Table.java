package org.sunder.exchange;

import static org.sunder.exchange.Column.needed;
import static org.sunder.exchange.Column.optional;
import static org.sunder.exchange.Column.since;

import java.util.List;
import java.util.stream.Collectors;
import org.sunder.airframe.DeploymentEvent;
import org.sunder.airframe.UnitSystem;
import org.sunder.engine.learning.model.Outcome;
import org.sunder.engine.physics.packing.Containment;
import org.sunder.engine.physics.retention.PinThread;
import org.sunder.engine.quantity.ForceUnit;
import org.sunder.engine.quantity.LengthUnit;
import org.sunder.engine.quantity.MassUnit;
import org.sunder.engine.quantity.SpecificEnergyUnit;
import org.sunder.engine.quantity.SpeedUnit;
import org.sunder.groundtest.Occasion;

/**
 * A table of a flyer's things.
 *
 * @param name in the database
 * @param field in an export
 * @param columns but the flyer's id, which is whose export it is
 */
record Table(String name, String field, List<Column> columns) {

    private static final int MOST = Integer.MAX_VALUE;
    private static final double LARGEST_FACTOR = 1e6;
    private static final Form NAME = Form.text(80);
    private static final Form NOTE = Form.text(500);
    private static final Form NOTES = Form.text(2000);
    private static final Form COUNT = Form.whole(0, MOST);
    private static final Form CHANCE = Form.real(0, 1);
    private static final Form FACTOR = Form.real(Double.MIN_NORMAL, LARGEST_FACTOR);

    /** All of them; what is named stands before what names it. */
    static final List<Table> ALL = List.of(
            new Table(
                    "powder",
                    "powders",
                    List.of(
                            needed("id", Form.ID),
                            needed("name", NAME),
                            optional("name_in_use", NAME),
                            optional("lot", NAME),
                            optional("granulation", Form.text(40)),
                            needed("force_value", Form.POSITIVE),
                            needed("force_unit", Form.unit(SpecificEnergyUnit.class)),
                            needed("relative_uncertainty", Form.POSITIVE),
                            optional("note", NOTE),
                            needed("created_at", Form.TIME),
                            optional("archived_at", Form.TIME),
                            needed("version", COUNT))),
            new Table(
                    "pin_batch",
                    "pinBatches",
                    List.of(
                            needed("id", Form.ID),
                            needed("name", NAME),
                            needed("thread", Form.kept(PinThread.class)),
                            optional("lot", NAME),
                            optional("note", NOTE),
                            needed("pulls", COUNT),
                            needed("created_at", Form.TIME),
                            optional("archived_at", Form.TIME),
                            needed("version", COUNT))),
            new Table(
                    "pull_test",
                    "pullTests",
                    List.of(
                            needed("id", Form.ID),
                            needed("batch_id", Form.ID),
                            needed("sequence", COUNT),
                            needed("force_value", Form.POSITIVE),
                            needed("force_unit", Form.unit(ForceUnit.class)),
                            needed("at", Form.TIME),
                            since("left_out", Form.YES_OR_NO, false))),
            new Table(
                    "airframe",
                    "airframes",
                    List.of(
                            needed("id", Form.ID),
                            needed("name", NAME),
                            needed("units", Form.word(UnitSystem.class)),
                            optional("outer_diameter_value", Form.POSITIVE),
                            optional("outer_diameter_unit", Form.unit(LengthUnit.class)),
                            optional("notes", NOTES),
                            needed("created_at", Form.TIME),
                            optional("archived_at", Form.TIME),
                            needed("version", COUNT))),
            new Table(
                    "joint",
                    "joints",
                    List.of(
                            needed("id", Form.ID),
                            needed("airframe_id", Form.ID),
                            needed("name", NAME),
                            needed("event", Form.word(DeploymentEvent.class)),
                            needed("current_revision", Form.whole(1, MOST)),
                            needed("created_at", Form.TIME),
                            needed("version", COUNT))),
            new Table(
                    "setup",
                    "setups",
                    List.of(
                            needed("id", Form.ID),
                            needed("joint_id", Form.ID),
                            needed("revision", Form.whole(1, MOST)),
                            needed("document", Documents.SETUP),
                            needed("created_at", Form.TIME))),
            new Table(
                    "load_out",
                    "loadOuts",
                    List.of(
                            needed("id", Form.ID),
                            needed("airframe_id", Form.ID),
                            needed("document", Documents.LOAD_OUT),
                            needed("created_at", Form.TIME),
                            needed("version", COUNT))),
            new Table(
                    "ground_test",
                    "groundTests",
                    List.of(
                            needed("id", Form.ID),
                            needed("occasion", Form.word(Occasion.class)),
                            needed("joint_id", Form.ID),
                            needed("setup_id", Form.ID),
                            needed("setup_revision", Form.whole(1, MOST)),
                            needed("charge_value", Form.POSITIVE),
                            needed("charge_unit", Form.unit(MassUnit.class)),
                            needed("outcome", Form.word(Outcome.class)),
                            needed("damaged", Form.YES_OR_NO),
                            optional("speed_value", Form.POSITIVE),
                            optional("speed_unit", Form.unit(SpeedUnit.class)),
                            optional("speed_uncertainty_percent", Form.POSITIVE),
                            optional("containment", Form.word(Containment.class)),
                            optional("notes", NOTES),
                            optional("beyond", Form.text(20)),
                            needed("fired_at", Form.TIME),
                            needed(
                                    "fired_offset_seconds",
                                    Form.whole(-64_800, 64_800)), // the widest that java.time takes
                            needed("received_at", Form.TIME),
                            optional("logged_by", NAME),
                            needed("predicted_separated", CHANCE),
                            needed("predicted_partial", CHANCE),
                            needed("predicted_none", CHANCE),
                            needed("factor_median", FACTOR),
                            needed("factor_low", FACTOR),
                            needed("factor_high", FACTOR))),
            new Table(
                    "ground_test_void",
                    "voids",
                    List.of(
                            needed("id", Form.ID),
                            needed("test_id", Form.ID),
                            needed("sequence", COUNT),
                            needed("voided", Form.YES_OR_NO),
                            needed("reason", NOTE),
                            needed("at", Form.TIME))));

    /** Where a column stands in a row. */
    int place(String column) {
        return columns.stream().map(Column::name).toList().indexOf(column);
    }

    String select() {
        return "select " + names() + " from " + name + " where flyer_id = ? order by id";
    }

    String insert() {
        String marks = columns.stream().map(column -> "?").collect(Collectors.joining(", "));
        return "insert into " + name + " (flyer_id, " + names() + ") values (?, " + marks + ")";
    }

    private String names() {
        return columns.stream().map(Column::name).collect(Collectors.joining(", "));
    }
}
