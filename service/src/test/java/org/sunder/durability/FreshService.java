package org.sunder.durability;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.UUID;
import org.springframework.boot.builder.SpringApplicationBuilder;
import org.springframework.context.ConfigurableApplicationContext;
import org.sunder.SunderApplication;

/** A service within this process that knows of a log nothing but an export of it, and so works every answer out anew. */
final class FreshService implements AutoCloseable {

    private final ConfigurableApplicationContext context;
    private final Caller keeper;

    /**
     * Starts it on a database in memory.
     *
     * @param folder where its first key may lie
     */
    FreshService(Path folder) throws IOException {
        this.context = new SpringApplicationBuilder(SunderApplication.class)
                .run(
                        "--server.port=0",
                        "--spring.datasource.url=jdbc:h2:mem:" + UUID.randomUUID() + ";DB_CLOSE_DELAY=-1",
                        "--sunder.data-folder=" + folder,
                        "--sunder.access.keys=true",
                        "--sunder.access.requests-per-minute=1000000");
        String base = "http://127.0.0.1:" + context.getEnvironment().getProperty("local.server.port");
        this.keeper = new Caller(
                () -> base,
                Files.readString(folder.resolve("first-admin-key.txt")).trim());
    }

    /** Takes an export in for a flyer who had nothing. @return asks by that flyer's key */
    Caller told(String export) throws IOException {
        Caller flyer = keeper.with(Member.key(keeper, Member.entered(keeper, "told"), "full"));
        flyer.enter("/api/import", export);
        return flyer;
    }

    @Override
    public void close() {
        context.close();
    }
}
