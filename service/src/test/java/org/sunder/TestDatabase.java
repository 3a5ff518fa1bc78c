package org.sunder;

import java.util.concurrent.atomic.AtomicInteger;
import org.springframework.boot.test.util.TestPropertyValues;
import org.springframework.context.ApplicationContextInitializer;
import org.springframework.context.ConfigurableApplicationContext;
import org.sunder.postgres.PostgresServer;

/** The database of a run: H2 in memory, or PostgreSQL with {@code -Dsunder.test.database=postgresql}. */
public final class TestDatabase implements ApplicationContextInitializer<ConfigurableApplicationContext> {

    private static final AtomicInteger DATABASES = new AtomicInteger();

    /** Whether this run is on PostgreSQL. */
    public static boolean onPostgres() {
        return "postgresql".equals(System.getProperty("sunder.test.database"));
    }

    @Override
    public void initialize(ConfigurableApplicationContext context) {
        String url = onPostgres()
                ? PostgresServer.newDatabase()
                : "jdbc:h2:mem:service" + DATABASES.incrementAndGet() + ";DB_CLOSE_DELAY=-1";
        TestPropertyValues.of("spring.datasource.url=" + url).applyTo(context);
    }
}
