package org.sunder.page;

import java.io.IOException;
import java.nio.file.Path;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.io.TempDir;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.boot.test.web.server.LocalServerPort;
import org.sunder.Client;
import org.sunder.EmptyLog;
import org.sunder.ServiceTest;

/** A phone, the weather between it and the service, and one airframe with one joint and no test. */
@ServiceTest
@Tag("browser")
abstract class AtAJoint {

    @Autowired
    Client client;

    @Autowired
    EmptyLog emptyLog;

    @LocalServerPort
    int port;

    /** Memory of a browser that a test kills. */
    @TempDir
    Path profile;

    Weather weather;
    Browser phone;

    /** Addresses in the API. */
    String airframe;

    String joint;

    @BeforeAll
    static void need() {
        Browser.need();
    }

    @BeforeEach
    void aPhoneAtAJoint() throws IOException {
        emptyLog.empty();
        airframe = client.airframe();
        joint = client.joint(airframe);
        weather = new Weather(port);
        phone = Browser.shared();
    }

    @AfterEach
    void away() {
        if (!phone.isShared()) {
            phone.close();
        }
        weather.close();
        emptyLog.empty();
    }
}
