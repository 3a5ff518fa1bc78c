package org.sunder;

import org.springframework.boot.SpringApplication;
import org.springframework.boot.autoconfigure.SpringBootApplication;

/** Starts the service. */
@SpringBootApplication
public class SunderApplication {

    /**
     * Starts the service.
     *
     * @param args Spring Boot arguments, e.g. {@code --spring.profiles.active=demo}
     */
    public static void main(String[] args) {
        SpringApplication.run(SunderApplication.class, args);
    }
}
