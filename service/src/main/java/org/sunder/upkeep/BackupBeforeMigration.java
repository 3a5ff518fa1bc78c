package org.sunder.upkeep;

import org.flywaydb.core.Flyway;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;
import org.springframework.boot.flyway.autoconfigure.FlywayMigrationStrategy;
import org.springframework.context.annotation.Bean;
import org.springframework.context.annotation.Configuration;

/** An embedded database is copied before a newer version changes its tables. */
@Configuration(proxyBeanMethods = false)
class BackupBeforeMigration {

    private static final Logger LOG = LoggerFactory.getLogger(BackupBeforeMigration.class);

    @Bean
    FlywayMigrationStrategy copyThenMigrate(Backups backups) {
        return flyway -> {
            if (changes(flyway)) {
                backups.make("before-migration").ifPresent(file -> LOG.info("The database was copied to {}", file));
            }
            flyway.migrate();
        };
    }

    private static boolean changes(Flyway flyway) {
        return flyway.info().applied().length > 0 && flyway.info().pending().length > 0;
    }
}
