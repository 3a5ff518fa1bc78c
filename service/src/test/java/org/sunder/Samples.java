package org.sunder;

/** Bodies that tests start from: a 98 mm airframe whose nose parts, worked by hand beside the physics tests. */
public final class Samples {

    public static final String AIRFRAME = """
            {"name":"Bittern","units":"metric","outerDiameter":{"value":98.00,"unit":"mm"}}""";

    public static final String SETUP = """
            {"innerDiameter":{"value":92,"unit":"mm"},
             "cavity":[{"kind":"nose","profile":{"shape":"tangent-ogive"},"baseDiameter":{"value":92,"unit":"mm"},
                        "length":{"value":620,"unit":"mm"},"tipCutoff":{"value":40,"unit":"mm"}}],
             "contents":[{"name":"bay pushed in","kind":"intrusion","depth":{"value":45,"unit":"mm"},"diameter":{"value":92,"unit":"mm"}},
                         {"name":"main parachute","kind":"fabric","material":"nylon","mass":{"value":340,"unit":"g"}},
                         {"name":"harness","kind":"fabric","material":"aramid","mass":{"value":120,"unit":"g"}}],
             "pins":[{"thread":"M2.5","count":3}],
             "fitForce":{"value":15,"unit":"N"},
             "shoulder":{"value":45,"unit":"mm"},
             "forwardMass":{"value":0.9,"unit":"kg"},"aftMass":{"value":4.1,"unit":"kg"},
             "ceiling":{"gaugePressure":{"value":300,"unit":"kPa"}},
             "measure":{"value":0.05,"unit":"g"}}""";

    public static final String JOINT = "{\"name\":\"nose to bay\",\"event\":\"main\",\"setup\":" + SETUP + "}";

    private Samples() {}

    /** A load-out that fills the compartment of a joint. */
    public static String loadOut(Object joint) {
        return "{\"name\":\"long case, big main\",\"motorCase\":\"54 mm, long\",\"compartments\":[{\"jointId\":\""
                + joint
                + "\",\"items\":[{\"name\":\"main parachute\",\"kind\":\"soft\",\"length\":{\"value\":180,\"unit\":\"mm\"},"
                + "\"diameter\":{\"value\":80,\"unit\":\"mm\"},\"material\":\"nylon\",\"mass\":{\"value\":340,\"unit\":\"g\"}}]}]}";
    }

    /** A load-out that fills two compartments, and reaches out of the second. */
    public static String loadOutTooLong(Object joint, Object other) {
        return loadOut(joint)
                .replace("big main", "and longer")
                .replaceFirst(
                        "]}]}$",
                        "]},{\"jointId\":\"" + other
                                + "\",\"items\":[{\"name\":\"drogue\",\"kind\":\"soft\",\"length\":{\"value\":90,\"unit\":\"mm\"},"
                                + "\"diameter\":{\"value\":80,\"unit\":\"mm\"}},{\"name\":\"motor case end\",\"kind\":\"hard\","
                                + "\"length\":{\"value\":560,\"unit\":\"mm\"},\"diameter\":{\"value\":54,\"unit\":\"mm\"},\"place\":\"far-end\"}]}]}");
    }

    /** A report of a test. */
    public static String test(String grams, String outcome) {
        return test(grams, outcome, "2026-05-03T10:20:00+01:00");
    }

    /** A report of a test at a time. */
    public static String test(String grams, String outcome, String firedAt) {
        return "{\"charge\":{\"value\":" + grams + ",\"unit\":\"g\"},\"outcome\":\"" + outcome + "\",\"firedAt\":\""
                + firedAt + "\"}";
    }
}
