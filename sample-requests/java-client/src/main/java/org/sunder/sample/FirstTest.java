package org.sunder.sample;

import java.math.BigDecimal;
import java.time.OffsetDateTime;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import org.sunder.client.ApiClient;
import org.sunder.client.ApiException;
import org.sunder.client.api.AdviceApi;
import org.sunder.client.api.AirframesApi;
import org.sunder.client.api.GroundTestsApi;
import org.sunder.client.api.JointsAndSetupsApi;
import org.sunder.client.model.Airframe;
import org.sunder.client.model.AirframeRequest;
import org.sunder.client.model.CavitySheet;
import org.sunder.client.model.CeilingSheet;
import org.sunder.client.model.GroundTestReport;
import org.sunder.client.model.Joint;
import org.sunder.client.model.JointRequest;
import org.sunder.client.model.Length;
import org.sunder.client.model.LoggedTest;
import org.sunder.client.model.Mass;
import org.sunder.client.model.NextCharge;
import org.sunder.client.model.PinSheet;
import org.sunder.client.model.Pressure;
import org.sunder.client.model.SetupSheet;

/** Enters an airframe and a joint, asks what to fire first, reports a test twice and shows that it was stored once. */
public final class FirstTest {

    private FirstTest() {}

    public static void main(String[] args) throws ApiException {
        ApiClient service = new ApiClient();
        service.updateBaseUri(args.length > 0 ? args[0] : "http://127.0.0.1:8080");
        Optional.ofNullable(System.getenv("SUNDER_KEY"))
                .ifPresent(key -> service.setRequestInterceptor(call -> call.header("Authorization", "Bearer " + key)));
        Airframe airframe = new AirframesApi(service)
                .createAirframe(new AirframeRequest().name("Dunlin").outerDiameter(millimetres("66")), newKey());
        Joint joint = new JointsAndSetupsApi(service)
                .createJoint(
                        airframe.getId(),
                        new JointRequest()
                                .name("nose to tube")
                                .event(JointRequest.EventEnum.MAIN)
                                .setup(setup()),
                        newKey());
        NextCharge next = new AdviceApi(service).getNextCharge(joint.getId(), null, null, null);
        System.out.println(next.getDecision() + " " + words(next.getCharge()) + ": " + next.getReason().getText());
        next.getCautions().forEach(caution -> System.out.println("  " + caution.getText()));

        GroundTestReport report = new GroundTestReport()
                .charge(next.getCharge())
                .outcome(GroundTestReport.OutcomeEnum.SEPARATED)
                .firedAt(OffsetDateTime.now().minusMinutes(1));
        GroundTestsApi log = new GroundTestsApi(service);
        String key = newKey();
        LoggedTest first = log.logGroundTest(joint.getId(), report, key);
        LoggedTest again = log.logGroundTest(joint.getId(), report, key);
        require(first.equals(again), "the report was stored twice");
        require(
                log.listGroundTests(joint.getId(), null, null).getItems().size() == 1,
                "the log has more than one test");
        System.out.println("then " + first.getNext().getDecision() + " " + words(first.getNext().getCharge()));
        try {
            new AdviceApi(service).getNextCharge(UUID.randomUUID(), null, null, null);
            require(false, "a joint that nobody has was found");
        } catch (ApiException problem) {
            require(problem.getCode() == 404, problem.getResponseBody());
        }
    }

    private static SetupSheet setup() {
        return new SetupSheet()
                .innerDiameter(millimetres("63"))
                .addCavityItem(new CavitySheet()
                        .kind(CavitySheet.KindEnum.CYLINDER)
                        .innerDiameter(millimetres("63"))
                        .length(millimetres("300")))
                .pins(List.of(new PinSheet().thread("M2").count(2)))
                .ceiling(new CeilingSheet()
                        .gaugePressure(new Pressure().value(new BigDecimal("250")).unit(Pressure.UnitEnum.K_PA)));
    }

    private static Length millimetres(String digits) {
        return new Length().value(new BigDecimal(digits)).unit(Length.UnitEnum.MM);
    }

    private static String words(Mass charge) {
        return charge == null ? "" : charge.getValue() + " " + charge.getUnit();
    }

    private static String newKey() {
        return UUID.randomUUID().toString();
    }

    private static void require(boolean holds, String otherwise) {
        if (!holds) {
            throw new IllegalStateException(otherwise);
        }
    }
}
