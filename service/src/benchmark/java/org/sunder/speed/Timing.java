package org.sunder.speed;

import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;

/** Times in milliseconds, of calls in turn or of many callers at once. */
final class Timing {

    private Timing() {}

    interface Caller {

        /** Calls as caller number so-and-so. @return how long each call took */
        List<Double> run(int caller);
    }

    /** Times of calls made in turn for a while, for each call. */
    static List<List<Double>> interleaved(List<Call> calls, long nanos) {
        List<List<Double>> times = new ArrayList<>();
        calls.forEach(call -> times.add(new ArrayList<>()));
        long end = System.nanoTime() + nanos;
        while (System.nanoTime() < end) {
            for (int i = 0; i < calls.size(); i++) {
                times.get(i).add(calls.get(i).time());
            }
        }
        return times;
    }

    /** Times of all callers, each in a thread of its own. */
    static List<Double> together(int callers, Caller caller) throws Exception {
        ExecutorService threads = Executors.newFixedThreadPool(callers);
        try {
            List<Future<List<Double>>> running = new ArrayList<>();
            for (int i = 0; i < callers; i++) {
                int number = i;
                running.add(threads.submit(() -> caller.run(number)));
            }
            List<Double> times = new ArrayList<>();
            for (Future<List<Double>> each : running) {
                times.addAll(each.get());
            }
            return times;
        } finally {
            threads.shutdown();
        }
    }

    /** Megabytes of the heap in use. */
    static double heap() {
        return (Runtime.getRuntime().totalMemory() - Runtime.getRuntime().freeMemory()) / 1e6;
    }

    static double median(List<Double> values) {
        return quantile(values, 0.5);
    }

    static double quantile(List<Double> values, double p) {
        return values.stream().sorted().toList().get((int) (p * (values.size() - 1)));
    }
}
