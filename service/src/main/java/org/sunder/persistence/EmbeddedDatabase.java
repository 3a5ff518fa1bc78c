package org.sunder.persistence;

import javax.sql.DataSource;
import org.springframework.jdbc.support.JdbcUtils;
import org.springframework.jdbc.support.MetaDataAccessException;

/** H2, in this process, where durability and room on the disk are the service's own business. */
final class EmbeddedDatabase {

    private EmbeddedDatabase() {}

    /** Whether it is what a source leads to. */
    static boolean isBehind(DataSource source) throws MetaDataAccessException {
        return "H2".equals(JdbcUtils.extractDatabaseMetaData(source, meta -> meta.getDatabaseProductName()));
    }
}
