package org.sunder.access;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.net.InetAddress;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.PosixFilePermissions;
import org.jspecify.annotations.Nullable;
import org.springframework.beans.factory.annotation.Value;
import org.springframework.boot.ApplicationArguments;
import org.springframework.boot.ApplicationRunner;
import org.springframework.boot.context.properties.EnableConfigurationProperties;
import org.springframework.core.annotation.Order;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Component;
import org.sunder.persistence.DurableTransactions;

/** Refuses to open to others without keys, and makes the first key where keys are asked for. */
@Component
@EnableConfigurationProperties(AccessSettings.class)
@Order(0)
class Doorkeeper implements ApplicationRunner {

    private static final String FILE = "first-admin-key.txt";

    private final AccessSettings settings;
    private final AccessKeys keys;
    private final DurableTransactions transactions;
    private final JdbcClient jdbc;
    private final Path folder;

    Doorkeeper(
            AccessSettings settings,
            AccessKeys keys,
            DurableTransactions transactions,
            JdbcClient jdbc,
            @Value("${sunder.data-folder}") Path folder,
            @Value("${server.address:}") @Nullable InetAddress address) {
        this.settings = settings;
        this.keys = keys;
        this.transactions = transactions;
        this.jdbc = jdbc;
        this.folder = folder;
        if (!settings.keys() && (address == null || !address.isLoopbackAddress())) {
            throw new OpenToOthers(address == null ? "all addresses" : address.getHostAddress());
        }
    }

    @Override
    public void run(ApplicationArguments arguments) {
        if (settings.keys()) {
            String secret = transactions.commit(this::firstKey);
            if (!secret.isEmpty()) {
                // Not by the log: a key must not travel to wherever logs are gathered.
                System.out.println("First admin key, shown once (also in " + folder.resolve(FILE) + "): " + secret);
            }
        }
    }

    /** The lock on the flyer's row lets one of several instances that start at once make it. */
    private String firstKey() {
        jdbc.sql("select id from flyer where id = ? for update")
                .params(CurrentFlyer.LOCAL)
                .query()
                .listOfRows();
        boolean known = keys.of(CurrentFlyer.LOCAL).stream()
                .anyMatch(key -> key.scope() == Scope.ADMIN && key.revokedAt() == null);
        if (known) {
            return "";
        }
        String secret = keys.issue(CurrentFlyer.LOCAL, "first admin key", Scope.ADMIN, null)
                .secret();
        try {
            keep(secret);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        return secret;
    }

    private void keep(String secret) throws IOException {
        Files.createDirectories(folder);
        Path file = folder.resolve(FILE);
        Files.deleteIfExists(file);
        if (file.getFileSystem().supportedFileAttributeViews().contains("posix")) {
            Files.createFile(file, PosixFilePermissions.asFileAttribute(PosixFilePermissions.fromString("rw-------")));
        }
        Files.writeString(file, secret + "\n");
    }
}
