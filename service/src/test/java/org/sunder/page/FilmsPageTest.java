package org.sunder.page;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.sunder.Samples;

/** The page of a joint: who films says so there, and reads what it does; measured separations stand beside what was predicted. */
class FilmsPageTest extends OneJoint {

    private String plan() {
        return read(page(joint) + "/plan").replaceAll("\\s+", " ");
    }

    @Test
    void whoFilmsSaysSoOnThePageAndReadsWhatItDoes() {
        client.post(joint + "/ground-tests", Samples.test("0.80", "none"));
        client.post(joint + "/ground-tests", Samples.test("0.95", "partial"));
        client.post(joint + "/ground-tests", Samples.test("1.15", "separated"));
        assertThat(plan()).contains("A filmed test tells more", ">I film my tests<");
        var pressed = submitted(page(joint) + "/films", "on=true");
        assertThat(pressed.statusCode()).isEqualTo(302);
        assertThat(pressed.headers().firstValue("Location").orElse("")).endsWith("/plan#films");
        String told =
                client.get(joint + "/next-charge").body().at("/filmed/text").asString();
        String charge = client.get(joint + "/next-charge")
                .body()
                .at("/charge/value")
                .decimalValue()
                .setScale(2)
                .toPlainString();
        assertThat(told).contains("in 100");
        assertThat(plan())
                .contains("You film your tests. " + told, ">I do not film my tests<", "Fire " + charge + " g next");
        assertThat(read("/")).as("the first page names the same charge").contains("Fire " + charge + " g next");
        submitted(page(joint) + "/films", "on=false");
        assertThat(plan()).contains("A filmed test tells more", ">I film my tests<");
    }

    @Test
    void whereASpeedTellsNothingThePageSaysWhatIsMissing() {
        client.put("/api/filming", "{\"filming\":true}");
        String bare = Samples.SETUP.replaceFirst("\"aftMass\":\\{[^}]*\\},", "");
        client.put(joint + "/setup", bare, "If-Match", "*");
        assertThat(plan())
                .contains("here a speed tells nothing: it takes the masses of both parts", "State them in the setup.");
    }

    @Test
    void aJointOfNobodyIsNoPlaceToSayIt() {
        assertThat(submitted("/joints/01980a6e-3c40-7d2b-9c53-5f0f6b1c2d3e/films", "on=true")
                        .statusCode())
                .isEqualTo(404);
        assertThat(submitted(page(joint) + "/films", "on=perhaps").statusCode()).isBetween(400, 499);
        assertThat(client.get("/api/filming").body().path("filming").asBoolean())
                .isFalse();
    }

    @Test
    void aMeasuredSeparationStandsBesideWhatWasPredicted() {
        timed("9.0", "1.00");
        timed("30.0", "1.05");
        String plan = plan();
        assertThat(plan).contains("Parted at 9 m/s, predicted ", "30 J for the harness");
        assertThat(plan.split("300 kPa was stated: look over bulkheads", -1))
                .as("beside the answer, and at the test")
                .hasSize(3);
        String speed = read(page(joint) + "/speed?stretch=250").replaceAll("\\s+", " ");
        assertThat(speed).contains("As measured", "9 m/s ±\u00a06\u00a0%", "29.9 J", "239 N", "300 kPa was stated");
        assertThat(read(page(joint) + "/speed").replaceAll("\\s+", " ")).contains("As measured", "stretch not given");
        assertThat(read(page(joint) + "/speed?stretch=0")).contains("As measured", "Allowed: 1 mm to 100 m.");
    }

    private void timed(String speed, String grams) {
        String body = Samples.test(grams, "separated")
                .replaceFirst(
                        "\\{", "{\"speed\":{\"value\":" + speed + ",\"unit\":\"m/s\"},\"speedUncertaintyPercent\":6,");
        assertThat(client.post(joint + "/ground-tests", body).status()).isEqualTo(201);
    }
}
