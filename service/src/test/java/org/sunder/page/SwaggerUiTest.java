package org.sunder.page;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.openqa.selenium.By;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.boot.test.web.server.LocalServerPort;
import org.sunder.Client;
import org.sunder.InThoroughRuns;
import org.sunder.ServiceTest;

/** The page that shows every call works under its own policy, and asks no other host. */
@ServiceTest
@Tag("browser")
class SwaggerUiTest {

    @Autowired
    Client client;

    @LocalServerPort
    int port;

    private Browser browser;

    @BeforeEach
    void open() {
        Browser.need();
        browser = Browser.shared();
        browser.width(Browser.DESK);
        browser.go("http://127.0.0.1:" + port + "/swagger-ui.html");
        browser.find(".opblock");
    }

    @Test
    @InThoroughRuns
    void listsEveryOperationOfTheSpecificationAndTriesOneOut() {
        long operations = client.get("/v3/api-docs")
                .body()
                .at("/paths")
                .valueStream()
                .flatMap(path -> path.propertyStream())
                .filter(operation -> operation.getValue().has("operationId"))
                .count();
        assertThat(operations).isGreaterThan(40);
        browser.until("every operation", d -> browser.all(".opblock").size() == operations ? true : null);
        browser.picture("swagger-ui-1280");
        browser.click("#operations-Airframes-createAirframe .opblock-summary-control");
        browser.click("#operations-Airframes-createAirframe .try-out__btn");
        browser.click("#operations-Airframes-createAirframe .execute");
        browser.says("#operations-Airframes-createAirframe .live-responses-table .response-col_status", "201");
        String location = browser.until(
                "the new airframe",
                d -> d.findElements(By.cssSelector(".live-responses-table .headerline")).stream()
                        .map(line -> line.getText().trim())
                        .filter(line -> line.startsWith("location: "))
                        .findFirst()
                        .orElse(null));
        assertThat(client.get(location.replace("location: ", "").trim()).status())
                .isEqualTo(200);
        browser.picture("swagger-ui-tried-1280");
        assertThat(browser.complaints()).isEmpty();
        assertNothingLeftTheOrigin();
    }

    private void assertNothingLeftTheOrigin() {
        Object asked = browser.script("return performance.getEntriesByType('resource').map((entry) => entry.name)"
                + ".filter((name) => !name.startsWith('data:'))");
        assertThat((List<?>) asked)
                .isNotEmpty()
                .allSatisfy(
                        address -> assertThat(String.valueOf(address)).startsWith("http://127.0.0.1:" + port + "/"));
    }
}
