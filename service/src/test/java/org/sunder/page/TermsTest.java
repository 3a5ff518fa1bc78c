package org.sunder.page;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.util.List;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.openqa.selenium.Keys;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.boot.test.web.server.LocalServerPort;
import org.sunder.Client;
import org.sunder.EmptyLog;
import org.sunder.Samples;
import org.sunder.ServiceTest;

/** Words are explained once, and wherever they stand. */
@ServiceTest
@Tag("browser")
class TermsTest {

    private static final Pattern OPENS = Pattern.compile("popovertarget=\"([^\"]*)\"");

    @Autowired
    Client client;

    @Autowired
    EmptyLog emptyLog;

    @LocalServerPort
    int port;

    private String airframe;
    private String joint;

    @BeforeEach
    void aJoint() {
        emptyLog.empty();
        airframe = client.airframe();
        joint = client.joint(airframe);
        client.post(joint + "/ground-tests", Samples.test("1.00", "separated"));
    }

    @Test
    void eachIsOneSentenceWithAdvice() {
        List<Term> all = Stream.concat(Term.OURS.stream(), Term.TRADE.stream()).toList();
        assertThat(all.stream().map(Term::slug)).doesNotHaveDuplicates();
        assertThat(all).allSatisfy(term -> {
            assertThat(term.meaning()).endsWith(".");
            assertThat(term.meaning().indexOf(". ")).as(term.name()).isEqualTo(-1);
            assertThat(term.advice()).endsWith(".");
        });
        String page = client.get("/terms", "Accept", "text/html").raw().body();
        assertThat(all)
                .allSatisfy(term -> assertThat(page)
                        .contains("id=\"" + term.slug() + "\"")
                        .contains(term.meaning().replace("'", "&#39;")));
    }

    @Test
    void whatAPageUnderlinesItExplains() {
        for (String path : new String[] {joint + "/plan", airframe, airframe + "/flight-day", "/fleet"}) {
            String page = client.get(path.replace("/api", ""), "Accept", "text/html")
                    .raw()
                    .body();
            List<String> opened =
                    OPENS.matcher(page).results().map(match -> match.group(1)).toList();
            assertThat(opened).as(path).isNotEmpty();
            assertThat(opened).as(path).allSatisfy(id -> assertThat(page).contains("id=\"" + id + "\""));
        }
    }

    @Test
    void aWordOpensItsSentenceByKeyboardAndTouch() throws IOException {
        Browser.need();
        try (Weather weather = new Weather(port)) {
            Browser phone = Browser.shared();
            phone.go(weather.url(joint.replace("/api", "") + "/plan"));
            assertThat(phone.find("#about-retention").isDisplayed()).isFalse();
            phone.find("[popovertarget=about-retention]").sendKeys(Keys.ENTER);
            phone.says("#about-retention", "The force that keeps the joint closed");
            phone.find("[popovertarget=about-retention]").sendKeys(Keys.ESCAPE);
            phone.until("closed", d -> phone.find("#about-retention").isDisplayed() ? null : true);
            phone.click("[popovertarget=about-ceiling]");
            phone.says("#about-ceiling", "must never be exceeded");
            phone.go(weather.url(joint.replace("/api", "")));
            phone.find("#tried");
            phone.click("[popovertarget=about-free-volume]");
            phone.says("#about-free-volume", "left for gas");
            assertThat(phone.blocked()).isEmpty();
        }
    }
}
