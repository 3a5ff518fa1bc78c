package org.sunder.exchange;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestInstance;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;
import org.springframework.beans.factory.annotation.Autowired;
import org.sunder.Client;
import org.sunder.access.AccessKeys;
import org.sunder.access.Flyers;
import org.sunder.access.KeyedServiceTest;
import org.sunder.access.Scope;

/** An import stores nothing that the calls refuse, and names the row. */
@KeyedServiceTest
@TestInstance(TestInstance.Lifecycle.PER_CLASS)
class ImportRulesTest {

    @Autowired
    Client client;

    @Autowired
    AccessKeys keys;

    @Autowired
    Flyers flyers;

    Client one;
    Client other;
    String exported = "";

    /** Refused imports leave nothing, so that one flyer can be asked to take them all. */
    @BeforeAll
    void prepare() {
        one = flyer();
        other = flyer();
        exported = SmallFleet.exported(one);
    }

    static Stream<Arguments> refused() {
        String measured = "\"measured\":\\{\"mean\":\\{[^}]*},\"standardDeviation\":\\{[^}]*},\"tests\":2}";
        return Stream.of(
                Arguments.of("\"outcome\":\"separated\"", "\"outcome\":\"none\"", "/groundTests/0/speedValue"),
                Arguments.of(
                        "\"speedUncertaintyPercent\":\"6.50\"",
                        "\"speedUncertaintyPercent\":\"2\"",
                        "/groundTests/0/speedUncertaintyPercent"),
                Arguments.of(
                        "\"speedValue\":\"7.5\",\"speedUnit\":\"m/s\",", "", "/groundTests/0/speedUncertaintyPercent"),
                Arguments.of("\"speedUnit\":\"m/s\",", "", "/groundTests/0/speedValue"),
                Arguments.of("\"speedValue\":\"7.5\"", "\"speedValue\":\"301\"", "/groundTests/0/speedValue"),
                Arguments.of("\"chargeValue\":\"1.00\"", "\"chargeValue\":\"99999\"", "/groundTests/0/chargeValue"),
                Arguments.of("\"firedAt\":\"2026", "\"firedAt\":\"2200", "/groundTests/0/firedAt"),
                Arguments.of("\"receivedAt\":\"20[0-9]{2}", "\"receivedAt\":\"2020", "/groundTests/0/firedAt"),
                Arguments.of("\"receivedAt\":\"20[0-9]{2}", "\"receivedAt\":\"2200", "/groundTests/0/receivedAt"),
                Arguments.of("\"notes\":\"windy\"", "\"notes\":\"half \\\\ud83d\"", "/groundTests/0/notes"),
                Arguments.of(
                        "\"outerDiameterValue\":\"98.00\"",
                        "\"outerDiameterValue\":\"1E999999999\"",
                        "/airframes/0/outerDiameterValue"),
                Arguments.of(
                        "\"outerDiameterValue\":\"98.00\"",
                        "\"outerDiameterValue\":\"1E2147483647\"",
                        "/airframes/0/outerDiameterValue"),
                Arguments.of(
                        "\"outerDiameterValue\":\"98.00\"",
                        "\"outerDiameterValue\":\"9800000\"",
                        "/airframes/0/outerDiameterValue"),
                Arguments.of("\"outerDiameterUnit\":\"mm\",", "", "/airframes/0/outerDiameterValue"),
                Arguments.of("\"name\":\"Bittern\"", "\"name\":\" \"", "/airframes/0/name"),
                Arguments.of("\"name\":\"nose to bay\"", "\"name\":\"\\\\t\"", "/joints/0/name"),
                Arguments.of("\"name\":\"white nylon\"", "\"name\":\" \"", "/pinBatches/0/name"),
                Arguments.of("\"forceValue\":\"190.5\"", "\"forceValue\":\"190500\"", "/pullTests/0/forceValue"),
                Arguments.of(
                        "\"predictedSeparated\":[0-9.E-]+",
                        "\"predictedSeparated\":1E999999999",
                        "/groundTests/0/predictedSeparated"),
                Arguments.of("\"leftOut\":false", "\"leftOut\":true", ""),
                Arguments.of("\"leftOut\":true", "\"leftOut\":\"yes\"", "/pullTests/2/leftOut"),
                Arguments.of("\"forceValue\":\"215.0\"", "\"forceValue\":\"0.002\"", "/powders/0/forceValue"),
                Arguments.of("\"nameInUse\":\"tin 3\"", "\"nameInUse\":\"tin 4\"", "/powders/0/nameInUse"),
                Arguments.of(
                        "\"name\":\"tin 3\",\"nameInUse\":\"tin 3\"",
                        "\"name\":\"fine-grain black powder\",\"nameInUse\":\"fine-grain black powder\"",
                        "/powders/0/name"),
                Arguments.of(
                        "\"relativeUncertainty\":\"0.10\"",
                        "\"relativeUncertainty\":\"0.9\"",
                        "/powders/0/relativeUncertainty"),
                Arguments.of("\"reason\":\"igniter\"", "\"reason\":\" \"", "/voids/0/reason"),
                Arguments.of("\"voided\":true", "\"voided\":false", ""),
                Arguments.of("\"count\":3", "\"count\":\"3\"", "/setups/0/document/pins/0/count"),
                Arguments.of("\"count\":3", "\"count\":3,\"colour\":\"red\"", "/setups/0/document/pins/0/colour"),
                Arguments.of("\"count\":3", "\"count\":49", "/setups/0/document/pins/0/count"),
                Arguments.of(
                        "\"value\":45,\"unit\":\"mm\"",
                        "\"value\":1E999999999,\"unit\":\"mm\"",
                        "/setups/0/document/contents/0/depth/value"),
                Arguments.of(
                        "\"value\":45,\"unit\":\"mm\"",
                        "\"value\":150,\"unit\":\"mm\"",
                        "/setups/0/document/contents/0/depth"),
                Arguments.of(
                        "\"powderUncertainty\":0.10",
                        "\"powderUncertainty\":1e-999999999",
                        "/setups/0/document/powderUncertainty"),
                Arguments.of("," + measured, "", "/setups/0/document/pins/0/measured"),
                Arguments.of(
                        "\"batch\":\"[^\"]*\"",
                        "\"batch\":\"01980a6e-3c40-7d2b-9c53-5f0f6b1c2d3e\"",
                        "/setups/0/document/pins/0/batch"),
                Arguments.of(
                        "\"kind\":\"soft\"", "\"kind\":\"mushy\"", "/loadOuts/0/document/compartments/0/items/0/kind"),
                Arguments.of(
                        "\"value\":180,\"unit\":\"mm\"",
                        "\"value\":-180,\"unit\":\"mm\"",
                        "/loadOuts/0/document/compartments/0/items/0/length"),
                Arguments.of(
                        "\"jointId\":\"[^\"]*\",\"items\"",
                        "\"jointId\":\"01980a6e-3c40-7d2b-9c53-5f0f6b1c2d3e\",\"items\"",
                        "/loadOuts/0/document/compartments/0/jointId"));
    }

    @ParameterizedTest
    @MethodSource("refused")
    void whatACallRefusesAnImportRefusesByItsRow(String good, String bad, String pointer) {
        String empty = other.get("/api/export").raw().body();
        String changed = exported.replaceFirst(good, bad);
        assertThat(changed).isNotEqualTo(exported);
        var refused = other.post("/api/import", changed);
        assertThat(refused.status()).as(refused.raw().body()).isIn(400, 409, 422);
        assertThat(refused.body().path("errors").get(0).path("pointer").asString())
                .as(refused.raw().body())
                .startsWith(pointer);
        assertThat(other.get("/api/export").raw().body()).isEqualTo(empty);
    }

    @Test
    void whatACallTakesAnImportTakes() {
        Client another = flyer();
        one.post("/api/airframes", "{\"name\":\"a\",\"notes\":\"\"}");
        String all = one.get("/api/export").raw().body();
        var taken = another.post("/api/import", all);
        assertThat(taken.status()).as(taken.raw().body()).isEqualTo(200);
        assertThat(another.get("/api/export").raw().body()).isEqualTo(all);
    }

    /** Written before a pull could be left out. */
    @Test
    void anOlderExportIsTakenInWithAllItsPullsCounting() {
        Client another = flyer();
        var taken = another.post("/api/import", exported.replaceAll(",\"leftOut\":(true|false)", ""));
        assertThat(taken.status()).as(taken.raw().body()).isEqualTo(200);
        var pulls = another.get("/api/pin-batches").body().at("/items/0/pullTests");
        assertThat(pulls)
                .hasSize(3)
                .allSatisfy(
                        pull -> assertThat(pull.path("leftOut").asBoolean(true)).isFalse());
    }

    private Client flyer() {
        return client.with(keys.issue(flyers.enter("someone").id(), "test", Scope.FULL, null)
                .secret());
    }
}
