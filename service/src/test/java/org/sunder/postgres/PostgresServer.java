package org.sunder.postgres;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.net.ServerSocket;
import java.sql.Connection;
import java.sql.DriverManager;
import java.sql.SQLException;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.atomic.AtomicInteger;
import org.testcontainers.DockerClientFactory;
import org.testcontainers.postgresql.PostgreSQLContainer;
import org.testcontainers.utility.DockerImageName;

/** One PostgreSQL in a container for all tests of a run; each asks for a database of its own. */
public final class PostgresServer {

    private static final String OFFICIAL = "postgres:15";
    private static final AtomicInteger DATABASES = new AtomicInteger();

    private PostgresServer() {}

    /** Whether a container engine is at hand. */
    static boolean available() {
        return DockerClientFactory.instance().isDockerAvailable();
    }

    /** A container that is not started; for tests that stop theirs. */
    @SuppressWarnings("resource")
    static PostgreSQLContainer container() {
        String image =
                Optional.ofNullable(System.getenv("SUNDER_TEST_POSTGRES_IMAGE")).orElse(OFFICIAL);
        return new PostgreSQLContainer(DockerImageName.parse(image).asCompatibleSubstituteFor("postgres"));
    }

    /** A container that is not started, on a port that it keeps when it is killed and started again. */
    static PostgreSQLContainer restartable() {
        PostgreSQLContainer server = container();
        try (ServerSocket free = new ServerSocket(0)) {
            server.setPortBindings(List.of(free.getLocalPort() + ":5432"));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        return server;
    }

    /** The address of a new, empty database, with user and password in it. */
    public static String newDatabase() {
        PostgreSQLContainer server = Shared.STARTED;
        String name = "sunder_" + DATABASES.incrementAndGet();
        try (Connection connection = DriverManager.getConnection(url(server, server.getDatabaseName()))) {
            connection.createStatement().execute("create database " + name);
        } catch (SQLException e) {
            throw new IllegalStateException(e);
        }
        return url(server, name);
    }

    static String url(PostgreSQLContainer server, String database) {
        return "jdbc:postgresql://" + server.getHost() + ":" + server.getFirstMappedPort() + "/" + database + "?user="
                + server.getUsername() + "&password=" + server.getPassword();
    }

    private static final class Shared {
        // Never stopped here: the library removes its containers when the process ends.
        static final PostgreSQLContainer STARTED = started();

        private static PostgreSQLContainer started() {
            PostgreSQLContainer server = container();
            server.start();
            return server;
        }
    }
}
