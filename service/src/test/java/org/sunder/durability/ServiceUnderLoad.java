package org.sunder.durability;

import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import org.springframework.boot.builder.SpringApplicationBuilder;
import org.sunder.SunderApplication;

/** Runs the service and enters airframes until it is killed; prints each that was acknowledged. */
final class ServiceUnderLoad {

    private ServiceUnderLoad() {}

    public static void main(String[] args) throws Exception {
        var service = new SpringApplicationBuilder(SunderApplication.class)
                .run("--server.port=0", "--spring.datasource.url=" + args[0]);
        String base = "http://127.0.0.1:" + service.getEnvironment().getProperty("local.server.port");
        HttpClient http = HttpClient.newHttpClient();
        for (int i = 0; true; i++) {
            HttpRequest request = HttpRequest.newBuilder(URI.create(base + "/api/airframes"))
                    .header("Content-Type", "application/json")
                    .POST(HttpRequest.BodyPublishers.ofString("{\"name\":\"load " + i + "\"}"))
                    .build();
            if (http.send(request, HttpResponse.BodyHandlers.ofString()).statusCode() == 201) {
                System.out.println("acknowledged load " + i);
            }
        }
    }
}
