package org.sunder.problem;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.File;
import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.nio.file.Path;
import java.util.concurrent.atomic.AtomicBoolean;
import org.apache.catalina.connector.Connector;
import org.apache.catalina.core.StandardHost;
import org.apache.catalina.startup.Tomcat;
import org.apache.coyote.http11.Http11NioProtocol;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A stop that comes between the first line of a request and its headers. */
class StoppingTest {

    @TempDir
    Path folder;

    /** Told to stop as soon as it begins to read a request. */
    public static final class StoppedWhileReading extends Http11NioProtocol {

        private final AtomicBoolean reading = new AtomicBoolean();

        @Override
        public boolean isPaused() {
            return reading.getAndSet(true);
        }
    }

    @Test
    void asksToComeAgainAndCallsNoRequestMalformed() throws Exception {
        Tomcat container = new Tomcat();
        container.setBaseDir(folder.toString());
        Connector connector = new Connector(new StoppedWhileReading());
        connector.setPort(0);
        container.setConnector(connector);
        ((StandardHost) container.getHost()).setErrorReportValveClass(RefusedByContainer.class.getName());
        container.addContext("", new File(folder.toString()).getAbsolutePath());
        container.start();
        try {
            HttpRequest request = HttpRequest.newBuilder(
                            URI.create("http://127.0.0.1:" + connector.getLocalPort() + "/api/airframes"))
                    .build();
            HttpResponse<String> answer =
                    HttpClient.newHttpClient().send(request, HttpResponse.BodyHandlers.ofString());
            assertThat(answer.statusCode()).as(answer.body()).isEqualTo(503);
            assertThat(answer.headers().firstValue("Retry-After")).hasValue("5");
            assertThat(answer.body()).contains("/problems/stopping", "nothing was stored");
        } finally {
            container.stop();
            container.destroy();
        }
    }
}
