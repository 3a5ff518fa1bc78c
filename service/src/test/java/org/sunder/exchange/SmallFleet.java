package org.sunder.exchange;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.sunder.Client;
import org.sunder.Samples;

/** A fleet with one of everything that an export holds. */
final class SmallFleet {

    private SmallFleet() {}

    /** Enters it and exports it. */
    static String exported(Client flyer) {
        String powder = "{\"name\":\"tin 3\",\"powderForce\":{\"value\":215.0,\"unit\":\"kJ/kg\"}}";
        flyer.post("/api/powders", powder);
        var batch = flyer.post("/api/pin-batches", "{\"name\":\"white nylon\",\"thread\":\"M2.5\"}");
        for (String force : List.of("190.5", "201.5", "1905")) {
            flyer.post(
                    batch.header("Location") + "/pull-tests", "{\"force\":{\"value\":" + force + ",\"unit\":\"N\"}}");
        }
        assertThat(flyer.post(batch.header("Location") + "/pull-tests/3/leave-out", "")
                        .status())
                .isEqualTo(200);
        String airframe = flyer.airframe();
        String setup = Samples.JOINT.replace("\"count\":3", "\"count\":3,\"batch\":\"" + batch.id() + "\"");
        var joint = flyer.post(airframe + "/joints", setup.replace("\"measure\"", "\"powder\":\"tin 3\",\"measure\""));
        assertThat(joint.status()).as(joint.raw().body()).isEqualTo(201);
        String report =
                "{\"speed\":{\"value\":7.5,\"unit\":\"m/s\"},\"speedUncertaintyPercent\":6.50,\"notes\":\"windy\","
                        + Samples.test("1.00", "separated").substring(1);
        String test =
                flyer.post(joint.header("Location") + "/ground-tests", report).header("Location");
        flyer.post(test + "/void", "{\"reason\":\"igniter\"}");
        assertThat(flyer.post(airframe + "/load-outs", Samples.loadOut(joint.id()))
                        .status())
                .isEqualTo(201);
        return flyer.get("/api/export").raw().body();
    }
}
