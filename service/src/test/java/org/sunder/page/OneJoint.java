package org.sunder.page;

import static org.assertj.core.api.Assertions.assertThat;

import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
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

    /** Presses a button of a page: its form is sent as a browser sends it. */
    HttpResponse<String> submitted(String path, String fields) {
        return HttpClient.newHttpClient()
                .sendAsync(
                        client.request(path, "Accept", "text/html", "Sec-Fetch-Site", "same-origin")
                                .header("Content-Type", "application/x-www-form-urlencoded")
                                .POST(HttpRequest.BodyPublishers.ofString(fields))
                                .build(),
                        HttpResponse.BodyHandlers.ofString())
                .join();
    }
}
