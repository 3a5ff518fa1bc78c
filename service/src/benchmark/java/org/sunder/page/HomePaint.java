package org.sunder.page;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import org.springframework.boot.builder.SpringApplicationBuilder;
import org.springframework.context.ConfigurableApplicationContext;
import org.sunder.Client;
import org.sunder.Samples;
import org.sunder.SunderApplication;

/**
 * When the largest thing of the first page is painted (largest contentful paint, W3C), for a fleet of 30 joints with three tests
 * each, in Chromium on the machine that the service runs on.
 */
public final class HomePaint {

    private static final int AIRFRAMES = 15;
    private static final int LOADS = 15;

    private HomePaint() {}

    /** Prints the table of service/docs/service-speed.md. */
    public static void main(String[] args) throws Exception {
        Path folder = Files.createTempDirectory("sunder-paint");
        try (ConfigurableApplicationContext service = new SpringApplicationBuilder(SunderApplication.class)
                .run("--sunder.data-folder=" + folder, "--server.port=0", "--logging.level.org.sunder=warn")) {
            enter(new Client(service.getEnvironment()));
            String home = "http://127.0.0.1:" + service.getEnvironment().getProperty("local.server.port") + "/";
            try (Browser browser = Browser.open(folder.resolve("browser"))) {
                System.out.println("| width | painted: median | slowest | the first of all | of the median, until the page had arrived | the page, unpacked |\n|---|---|---|---|---|---|");
                for (int width : List.of(Browser.PHONE, Browser.DESK)) {
                    browser.width(width);
                    row(width, painted(browser, home));
                }
            }
        }
    }

    private static void enter(Client client) {
        for (int i = 0; i < AIRFRAMES; i++) {
            String airframe = client.airframe();
            for (String name : List.of("nose to bay", "bay to booster")) {
                String joint = client.post(airframe + "/joints", Samples.JOINT.replace("nose to bay", name))
                        .header("Location");
                client.post(joint + "/ground-tests", Samples.test("0.60", "none"));
                client.post(joint + "/ground-tests", Samples.test("0.80", "partial"));
                client.post(joint + "/ground-tests", Samples.test("1.00", "separated"));
            }
        }
    }

    /**
     * One visit.
     *
     * @param painted ms from the request to the paint
     * @param arrived ms from the request to the last byte of the page
     * @param weight bytes of the page, unpacked
     */
    private record Visit(double painted, double arrived, double weight) {}

    private static List<Visit> painted(Browser browser, String home) {
        List<Visit> times = new ArrayList<>();
        for (int i = 0; i < LOADS; i++) {
            browser.go("about:blank");
            browser.go(home);
            List<?> told = (List<?>) browser.later("""
                    const done = arguments[arguments.length - 1];
                    let last = 0;
                    new PerformanceObserver(list => { for (const entry of list.getEntries()) last = entry.startTime; })
                        .observe({ type: 'largest-contentful-paint', buffered: true });
                    const [page] = performance.getEntriesByType('navigation');
                    setTimeout(() => done([last, page.responseEnd, page.decodedBodySize]), 1000);
                    """);
            times.add(new Visit(number(told.get(0)), number(told.get(1)), number(told.get(2))));
        }
        return times;
    }

    private static double number(Object told) {
        return ((Number) told).doubleValue();
    }

    private static void row(int width, List<Visit> visits) {
        List<Visit> sorted = visits.stream()
                .sorted(Comparator.comparingDouble(Visit::painted))
                .toList();
        Visit median = sorted.get(sorted.size() / 2);
        System.out.printf(
                Locale.ROOT,
                "| %d px | %.0f ms | %.0f ms | %.0f ms | %.0f ms | %.0f kB |%n",
                width,
                median.painted(),
                sorted.get(sorted.size() - 1).painted(),
                visits.get(0).painted(),
                median.arrived(),
                median.weight() / 1000);
    }
}
