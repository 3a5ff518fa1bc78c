package org.sunder.page;

import static org.assertj.core.api.Assertions.assertThat;

import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import org.sunder.Client;
import org.sunder.EmptyLog;
import org.sunder.Samples;
import org.sunder.ServiceTest;

/** Rockets put away and brought back, and what was entered by mistake deleted, by the forms of the pages. */
@ServiceTest
class PutAwayTest {

    @Autowired
    Client client;

    @Autowired
    EmptyLog emptyLog;

    private String airframe;
    private String joint;

    @BeforeEach
    void anAirframe() {
        emptyLog.empty();
        airframe = client.post("/api/airframes", Samples.AIRFRAME).header("Location");
        joint = client.post(airframe + "/joints", Samples.JOINT).header("Location");
    }

    @Test
    void aRocketPutAwayIsListedAndComesBackWithOnePress() {
        assertThat(page("/")).doesNotContain("/airframes/put-away");
        assertThat(page("/airframes/put-away")).contains("None is put away");
        client.delete(airframe, "If-Match", "*");
        assertThat(page("/")).contains("href=\"/airframes/put-away\"").doesNotContain(">Bittern<");
        assertThat(page("/fleet")).contains("href=\"/airframes/put-away\"");
        assertThat(page("/airframes/put-away")).contains(">Bittern<", "1 joint, put away", "Bring it back: Bittern");
        assertThat(page(own(airframe))).contains("Put away.", "Bring it back");
        var back = press(own(airframe) + "/bring-back", "");
        assertThat(back.statusCode()).isEqualTo(302);
        assertThat(back.headers().firstValue("Location").orElse("")).endsWith(own(airframe));
        assertThat(page("/")).contains(">Bittern<").doesNotContain("/airframes/put-away");
        assertThat(page(own(airframe) + "/flight-day")).contains("nose to bay");
    }

    @Test
    void whatGoesAlongWithAJointIsNamedFirst() {
        client.put(joint + "/setup", Samples.SETUP.replace("\"count\":3", "\"count\":2"), "If-Match", "*");
        client.post(airframe + "/load-outs", Samples.loadOut(joint.replaceAll(".*/", "")));
        String question = page(own(joint) + "/remove");
        assertThat(question).contains("Delete nose to bay?", "2 setups", "the load-out long case, big main", "Keep it");
        assertThat(page(own(joint))).contains("href=\"" + own(joint) + "/remove\"");
        client.put(joint + "/setup", Samples.SETUP, "If-Match", "*");
        var stale = press(own(joint) + "/remove", agreed(question));
        assertThat(stale.statusCode()).as("a setup came in between").isEqualTo(409);
        assertThat(stale.body()).contains("Nothing was deleted", "3 setups");
        assertThat(client.get(joint).status()).isEqualTo(200);
        var gone = press(own(joint) + "/remove", agreed(stale.body()));
        assertThat(gone.statusCode()).isEqualTo(302);
        assertThat(gone.headers().firstValue("Location").orElse("")).endsWith(own(airframe));
        assertThat(client.get(joint).status()).isEqualTo(404);
        assertThat(client.get(airframe + "/load-outs").body().path("items")).isEmpty();
    }

    @Test
    void whatGoesAlongWithARocketIsNamedFirst() {
        assertThat(page(own(airframe) + "/edit")).contains("href=\"" + own(airframe) + "/remove\"");
        String question = page(own(airframe) + "/remove");
        assertThat(question).contains("Delete Bittern?", "the joint nose to bay", "1 setup");
        assertThat(press(own(airframe) + "/remove", "").statusCode())
                .as("agreed to nothing")
                .isEqualTo(409);
        assertThat(press(own(airframe) + "/remove", agreed(question)).statusCode())
                .isEqualTo(302);
        assertThat(client.get(airframe).status()).isEqualTo(404);
    }

    @Test
    void whatHasALogIsNotOfferedForDeleting() {
        client.post(joint + "/ground-tests", Samples.test("0.85", "none"));
        for (String path : new String[] {own(joint), own(airframe)}) {
            String said = page(path + "/remove");
            assertThat(said)
                    .contains(" stays</h1>", "One firing is logged there")
                    .doesNotContain("Delete it for good");
            assertThat(press(path + "/remove", "").statusCode()).isEqualTo(409);
        }
        String key = "agreed=1-0-1-0-0";
        var forced = press(own(joint) + "/remove", key);
        assertThat(forced.statusCode()).as("agreed to by hand").isEqualTo(409);
        assertThat(client.get(joint).status()).isEqualTo(200);
    }

    /** What the form sends. */
    private static String agreed(String page) {
        Matcher value = Pattern.compile("name=\"agreed\" value=\"([^\"]*)\"").matcher(page);
        assertThat(value.find()).isTrue();
        return "agreed=" + value.group(1);
    }

    private static String own(String address) {
        return address.replace("/api", "");
    }

    private String page(String path) {
        return sent(client.request(path, "Accept", "text/html,*/*;q=0.8")).body();
    }

    private HttpResponse<String> press(String path, String fields) {
        return sent(client.request(path, "Accept", "text/html", "Sec-Fetch-Site", "same-origin")
                .header("Content-Type", "application/x-www-form-urlencoded")
                .POST(HttpRequest.BodyPublishers.ofString(fields)));
    }

    private static HttpResponse<String> sent(HttpRequest.Builder request) {
        return HttpClient.newHttpClient()
                .sendAsync(request.build(), HttpResponse.BodyHandlers.ofString())
                .join();
    }
}
