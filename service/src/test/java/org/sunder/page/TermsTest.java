package org.sunder.page;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.openqa.selenium.Keys;
import org.springframework.boot.test.web.server.LocalServerPort;
import org.sunder.Samples;

/** Words are explained once, and wherever they stand. */
@Tag("browser")
class TermsTest extends OneJoint {

    private static final Pattern OPENS = Pattern.compile("popovertarget=\"([^\"]*)\"");

    @LocalServerPort
    int port;

    @BeforeEach
    void itsTest() {
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
        String text = read("/terms");
        assertThat(all)
                .allSatisfy(term -> assertThat(text)
                        .contains("id=\"" + term.slug() + "\"")
                        .contains(term.meaning().replace("'", "&#39;")));
    }

    @Test
    void whatAPageUnderlinesItExplains() {
        for (String path :
                new String[] {joint + "/plan", airframe, airframe + "/flight-day", "/fleet", "/", "/stock"}) {
            String text = read(page(path));
            List<String> opened =
                    OPENS.matcher(text).results().map(match -> match.group(1)).toList();
            assertThat(opened).as(path).isNotEmpty();
            assertThat(opened).as(path).allSatisfy(id -> assertThat(text).contains("id=\"" + id + "\""));
        }
    }

    /** What its module underlines is in the page that a phone keeps. */
    @Test
    void thePageAtTheFieldKeepsTheWordsThatItExplains() throws IOException {
        String module = Files.readString(Path.of("src/main/resources/static/assets/field.js"));
        List<String> underlined = Pattern.compile("term\\('([^']*)'")
                .matcher(module)
                .results()
                .map(match -> match.group(1))
                .toList();
        String page = read("/field");
        assertThat(underlined).isNotEmpty().allSatisfy(slug -> assertThat(page).contains("id=\"about-" + slug + "\""));
    }

    @Test
    void aWordOpensItsSentenceByKeyboardAndTouch() throws IOException {
        Browser.need();
        try (Weather weather = new Weather(port)) {
            Browser phone = Browser.shared();
            phone.go(weather.url(page(joint) + "/plan"));
            assertThat(phone.find("#about-retention").isDisplayed()).isFalse();
            phone.find("[popovertarget=about-retention]").sendKeys(Keys.ENTER);
            phone.says("#about-retention", "The force that keeps the joint closed");
            phone.find("[popovertarget=about-retention]").sendKeys(Keys.ESCAPE);
            phone.until("closed", d -> phone.find("#about-retention").isDisplayed() ? null : true);
            phone.click("[popovertarget=about-ceiling]");
            phone.says("#about-ceiling", "must never be exceeded");
            phone.go(weather.url(page(joint)));
            phone.find("#tried");
            phone.click("[popovertarget=about-free-volume]");
            phone.says("#about-free-volume", "left for gas");
            assertThat(phone.blocked()).isEmpty();
        }
    }
}
