package org.sunder.page;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.BeforeEach;
import org.springframework.beans.factory.annotation.Autowired;
import org.sunder.Client;
import org.sunder.EmptyLog;
import org.sunder.ServiceTest;

/** Pages of a log that holds one airframe with one joint and no test. */
@ServiceTest
abstract class OneJoint {

    @Autowired
    Client client;

    @Autowired
    EmptyLog emptyLog;

    /** Addresses in the API. */
    String airframe;

    String joint;

    @BeforeEach
    void oneJoint() {
        emptyLog.empty();
        airframe = client.airframe();
        joint = client.joint(airframe);
    }

    /** The address of the page about what has this address in the API. */
    static String page(String address) {
        return address.replace("/api", "");
    }

    /** A page as it leaves the service. */
    String read(String path) {
        var answer = client.get(path, "Accept", "text/html");
        assertThat(answer.status()).as(path).isEqualTo(200);
        return answer.raw().body();
    }
}
