package org.sunder.upkeep;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Path;
import java.util.Optional;
import org.flywaydb.core.Flyway;
import org.flywaydb.core.api.MigrationInfoService;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;
import org.springframework.beans.factory.annotation.Value;
import org.springframework.boot.flyway.autoconfigure.FlywayMigrationStrategy;
import org.springframework.context.annotation.Bean;
import org.springframework.context.annotation.Configuration;

/** An embedded database is copied before a newer version changes its tables, and marked until the change has come to its end. */
@Configuration(proxyBeanMethods = false)
class BackupBeforeMigration {

    private static final Logger LOG = LoggerFactory.getLogger(BackupBeforeMigration.class);

    @Bean
    FlywayMigrationStrategy copyThenMigrate(Backups backups, @Value("${sunder.data-folder}") Path folder) {
        return flyway -> {
            MigrationInfoService state = flyway.info();
            if (state.pending().length == 0) {
                flyway.migrate(); // which looks at what was done before
                return;
            }
            Optional<Path> copy = state.applied().length > 0 ? backups.make("before-migration") : Optional.empty();
            copy.ifPresent(file -> LOG.info("The database was copied to {}", file));
            Optional<Path> database = backups.databaseIn(folder);
            if (database.isPresent()) {
                migrate(flyway, backups, folder, database.get(), copy);
            } else {
                flyway.migrate();
            }
        };
    }

    private static void migrate(Flyway flyway, Backups backups, Path folder, Path database, Optional<Path> copy) {
        try {
            ChangeMark mark = new ChangeMark(folder, database, copy);
            try {
                flyway.migrate();
                backups.onDisk();
            } finally {
                mark.close();
            }
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
