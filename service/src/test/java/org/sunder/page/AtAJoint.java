package org.sunder.page;

import java.io.IOException;
import java.nio.file.Path;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.io.TempDir;
import org.springframework.boot.test.web.server.LocalServerPort;

/** A phone, the weather between it and the service, and one airframe with one joint and no test. */
@Tag("browser")
abstract class AtAJoint extends OneJoint {

    @LocalServerPort
    int port;

    /** Memory of a browser that a test kills. */
    @TempDir
    Path profile;

    Weather weather;
    Browser phone;

    @BeforeAll
    static void need() {
        Browser.need();
    }

    @BeforeEach
    void aPhoneAtAJoint() throws IOException {
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
