package org.sunder.exchange;

import java.io.ByteArrayOutputStream;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.util.ArrayList;
import java.util.List;
import java.util.UUID;
import java.util.function.Consumer;
import org.jspecify.annotations.Nullable;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Isolation;
import org.springframework.transaction.annotation.Transactional;
import tools.jackson.core.JsonGenerator;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;
import tools.jackson.databind.node.JsonNodeFactory;
import tools.jackson.databind.node.ObjectNode;

/** Everything of one flyer as one document: the same things give the same bytes. */
@Service
class Export {

    static final String FORMAT = "sunder-export";
    static final int VERSION = 1;
    private static final int AT_A_TIME = 500;

    private final JdbcClient jdbc;
    private final JsonMapper json;

    Export(JdbcClient jdbc, JsonMapper json) {
        this.jdbc = jdbc;
        this.json = json;
    }

    /** The document, as of one moment. */
    @Transactional(readOnly = true, isolation = Isolation.REPEATABLE_READ)
    public byte[] of(UUID flyer) {
        ByteArrayOutputStream bytes = new ByteArrayOutputStream();
        try (JsonGenerator out = json.createGenerator(bytes)) {
            out.writeStartObject();
            out.writeStringProperty("format", FORMAT);
            out.writeNumberProperty("version", VERSION);
            for (Table table : Table.ALL) {
                out.writeArrayPropertyStart(table.field());
                // Row by row: all of them as a tree would take many times the memory of the document.
                forEach(table, flyer, row -> json.writeTree(out, shown(table, row)));
                out.writeEndArray();
            }
            out.writeEndObject();
        }
        return bytes.toByteArray();
    }

    /** The rows of a table, each value as the database keeps it. */
    List<List<@Nullable Object>> rows(Table table, UUID flyer) {
        List<List<@Nullable Object>> all = new ArrayList<>();
        forEach(table, flyer, all::add);
        return all;
    }

    private void forEach(Table table, UUID flyer, Consumer<List<@Nullable Object>> use) {
        jdbc.sql(table.select()).withFetchSize(AT_A_TIME).params(flyer).query(row -> {
            use.accept(row(table, row));
        });
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
