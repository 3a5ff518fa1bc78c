package org.sunder.page;

import com.sun.net.httpserver.HttpExchange;
import com.sun.net.httpserver.HttpServer;
import java.io.IOException;
import java.io.InputStream;
import java.net.InetAddress;
import java.net.InetSocketAddress;
import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Queue;
import java.util.Set;
import java.util.concurrent.ConcurrentHashMap;
import java.util.concurrent.ConcurrentLinkedQueue;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.concurrent.atomic.AtomicLong;

/**
 * The network between phone and service, with everything that goes wrong at a field. Nothing that passes may run scripts or
 * styles in line, or reach another host.
 */
final class Weather implements AutoCloseable {

    /** What the network does. */
    enum Sky {
        CLEAR,
        /** Nothing gets through. */
        DOWN,
        /** What is asked of the API is passed on when the sky turns again. */
        HOLDING,
        /** What is posted arrives, its answer is lost. */
        ANSWERS_LOST,
        /** What is posted arrives, and the answer is that an earlier request goes on. */
        IN_FLIGHT,
        /** What is posted arrives twice at once. */
        DOUBLED,
        /** The service does not know who asks any more. */
        SIGNED_OUT,
        /** Somebody else answers everything with a page of their own. */
        PORTAL
    }

    static {
        // Headers and body go out as two packets; without this each answer waits 40 ms for the first to be
        // acknowledged.
        System.setProperty("sun.net.httpserver.nodelay", "true");
    }

    private static final Set<String> OWN = Set.of(
            "connection", "content-length", "host", "transfer-encoding", "upgrade", "expect", "origin", "keep-alive");

    private static final Map<String, HttpResponse<byte[]>> PARTS = new ConcurrentHashMap<>();
    private static final AtomicLong MOVED = new AtomicLong();
    private static final AtomicInteger UNDERWAY = new AtomicInteger();

    private final HttpClient client = HttpClient.newBuilder()
            .version(HttpClient.Version.HTTP_1_1)
            .followRedirects(HttpClient.Redirect.NEVER)
            .build();
    private final ExecutorService threads = Executors.newCachedThreadPool();
    private final HttpServer server;
    private final int port;
    private final AtomicInteger posted = new AtomicInteger();
    private final Queue<String> asked = new ConcurrentLinkedQueue<>();
    private final Queue<String> answered = new ConcurrentLinkedQueue<>();
    private volatile Sky sky = Sky.CLEAR;

    Weather(int port) throws IOException {
        this.port = port;
        server = HttpServer.create(new InetSocketAddress(InetAddress.getLoopbackAddress(), 0), 0);
        server.setExecutor(threads);
        server.createContext("/", this::pass);
        server.start();
    }

    void turns(Sky next) {
        sky = next;
    }

    /** Differs from what it was before as long as anything passes through any weather. */
    static long movement() {
        return UNDERWAY.get() > 0 ? MOVED.incrementAndGet() : MOVED.get();
    }

    /** How often an address was asked for. */
    int asked(String path) {
        return (int) asked.stream().filter(path::equals).count();
    }

    /** How often the answer of an address had a status. */
    int answered(int status, String path) {
        return (int) answered.stream().filter((status + path)::equals).count();
    }

    /** How many posts reached the service. */
    int posted() {
        return posted.get();
    }

    String url(String path) {
        return "http://127.0.0.1:" + server.getAddress().getPort() + path;
    }

    /** The same by a name that is not the machine itself: plain http, no secure context. */
    String plainUrl(String path) {
        return "http://field.test:" + server.getAddress().getPort() + path;
    }

    private void pass(HttpExchange exchange) throws IOException {
        UNDERWAY.incrementAndGet();
        try {
            passOn(exchange);
        } finally {
            MOVED.incrementAndGet();
            UNDERWAY.decrementAndGet();
        }
    }

    private void passOn(HttpExchange exchange) throws IOException {
        Sky now = sky;
        try (exchange;
                InputStream in = exchange.getRequestBody()) {
            byte[] body = in.readAllBytes();
            boolean post = exchange.getRequestMethod().equals("POST");
            if (now == Sky.DOWN) {
                return;
            }
            if (now == Sky.PORTAL) {
                answer(exchange, 200, "text/html", "<!doctype html><title>Welcome to the network of the field</title>");
                return;
            }
            if (now == Sky.SIGNED_OUT && exchange.getRequestURI().getPath().startsWith("/api/")) {
                answer(exchange, 401, "application/problem+json", "{\"title\":\"Who are you?\",\"status\":401}");
                return;
            }
            while (sky == Sky.HOLDING && exchange.getRequestURI().getPath().startsWith("/api/")) {
                Thread.sleep(10);
            }
            asked.add(exchange.getRequestURI().getPath());
            posted.addAndGet(post ? 1 : 0);
            var asked = request(exchange, body);
            var twin = post && now == Sky.DOUBLED
                    ? client.sendAsync(asked, HttpResponse.BodyHandlers.ofByteArray())
                    : null;
            HttpResponse<byte[]> answer = answer(asked);
            if (twin != null) {
                twin.join();
            }
            answered.add(answer.statusCode() + exchange.getRequestURI().getPath());
            if (post && now == Sky.ANSWERS_LOST) {
                return;
            }
            if (post && now == Sky.IN_FLIGHT) {
                String problem = "{\"type\":\"/problems/request-in-flight\",\"title\":\"It goes on\",\"status\":409,"
                        + "\"detail\":\"The first request with this key goes on.\"}";
                answer(exchange, 409, "application/problem+json", problem);
                return;
            }
            answer.headers().map().forEach((name, values) -> {
                if (!OWN.contains(name.toLowerCase(Locale.ROOT)) && !name.startsWith(":")) {
                    exchange.getResponseHeaders().put(name, List.copyOf(values));
                }
            });
            // The card to print carries its own style, so that it can be saved as one file.
            if (!exchange.getRequestURI().getPath().endsWith("/ladder")) {
                boolean field = exchange.getRequestURI().getPath().startsWith("/field");
                exchange.getResponseHeaders()
                        .set(
                                "Content-Security-Policy",
                                "default-src 'self'" + (field ? "; media-src 'self' blob:" : ""));
            }
            int length = answer.body().length;
            exchange.sendResponseHeaders(answer.statusCode(), length == 0 ? -1 : length);
            exchange.getResponseBody().write(answer.body());
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
        }
    }

    /** The parts that every page shares are the same for as long as the service runs: each test's phone asks for all anew. */
    private HttpResponse<byte[]> answer(HttpRequest asked) throws IOException, InterruptedException {
        if (!asked.uri().getPath().startsWith("/assets/")) {
            return client.send(asked, HttpResponse.BodyHandlers.ofByteArray());
        }
        String which = asked.uri() + " " + asked.headers().allValues("Accept-Encoding");
        HttpResponse<byte[]> kept = PARTS.get(which);
        if (kept == null || asked.headers().firstValue("If-None-Match").isPresent()) {
            kept = client.send(asked, HttpResponse.BodyHandlers.ofByteArray());
            if (kept.statusCode() == 200) {
                PARTS.put(which, kept);
            }
        }
        return kept;
    }

    private static void answer(HttpExchange exchange, int status, String type, String text) throws IOException {
        byte[] bytes = text.getBytes(StandardCharsets.UTF_8);
        exchange.getResponseHeaders().set("Content-Type", type);
        exchange.sendResponseHeaders(status, bytes.length);
        exchange.getResponseBody().write(bytes);
    }

    private HttpRequest request(HttpExchange exchange, byte[] body) {
        var builder = HttpRequest.newBuilder(URI.create("http://127.0.0.1:" + port + exchange.getRequestURI()))
                .method(exchange.getRequestMethod(), HttpRequest.BodyPublishers.ofByteArray(body));
        exchange.getRequestHeaders().forEach((name, values) -> {
            if (!OWN.contains(name.toLowerCase(Locale.ROOT))) {
                values.forEach(value -> builder.header(name, value));
            }
        });
        return builder.build();
    }

    @Override
    public void close() {
        server.stop(0);
        threads.shutdownNow();
    }
}
