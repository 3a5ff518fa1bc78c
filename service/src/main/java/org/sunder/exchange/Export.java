package org.sunder.exchange;

import java.sql.ResultSet;
import java.sql.SQLException;
import java.util.ArrayList;
import java.util.List;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Isolation;
import org.springframework.transaction.annotation.Transactional;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;
import tools.jackson.databind.node.ArrayNode;
import tools.jackson.databind.node.JsonNodeFactory;
import tools.jackson.databind.node.ObjectNode;

/** Everything of one flyer as one document: the same things give the same bytes. */
@Service
class Export {

    static final String FORMAT = "sunder-export";
    static final int VERSION = 1;

    private final JdbcClient jdbc;
    private final JsonMapper json;

    Export(JdbcClient jdbc, JsonMapper json) {
        this.jdbc = jdbc;
        this.json = json;
    }

    /** The document, as of one moment. */
    @Transactional(readOnly = true, isolation = Isolation.REPEATABLE_READ)
    public byte[] of(UUID flyer) {
        ObjectNode all = JsonNodeFactory.instance.objectNode();
        all.put("format", FORMAT).put("version", VERSION);
        for (Table table : Table.ALL) {
            ArrayNode rows = all.putArray(table.field());
            rows(table, flyer).forEach(row -> rows.add(shown(table, row)));
        }
        return json.writeValueAsBytes(all);
    }

    /** The rows of a table, each value as the database keeps it. */
    List<List<@Nullable Object>> rows(Table table, UUID flyer) {
        return jdbc.sql(table.select())
                .params(flyer)
                .query((row, number) -> row(table, row))
                .list();
    }

    private static List<@Nullable Object> row(Table table, ResultSet row) throws SQLException {
        List<@Nullable Object> values = new ArrayList<>();
        for (Column column : table.columns()) {
            Object value = column.form().fromRow().read(row, column.name());
            values.add(row.wasNull() ? null : value);
        }
        return values;
    }

    private static JsonNode shown(Table table, List<@Nullable Object> row) {
        ObjectNode shown = JsonNodeFactory.instance.objectNode();
        for (int i = 0; i < row.size(); i++) {
            Object value = row.get(i);
            if (value != null) {
                Column column = table.columns().get(i);
                shown.set(column.field(), column.form().show().apply(value));
            }
        }
        return shown;
    }
}
