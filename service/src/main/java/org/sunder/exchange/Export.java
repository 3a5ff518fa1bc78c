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
    private final PhotoRows photos;
    private final JsonMapper json;

    Export(JdbcClient jdbc, PhotoRows photos, JsonMapper json) {
        this.jdbc = jdbc;
        this.photos = photos;
        this.json = json;
    }

    /**
     * An export, or a part of one.
     *
     * @param bytes the JSON
     * @param next after which test's photo the next document begins; null where nothing follows
     */
    record Document(ByteArrayOutputStream bytes, @Nullable UUID next) {}

    /**
     * Everything but the photos, as of one moment; how many of them there are stands in it, where there are any.
     *
     * @param flyer whose
     */
    @Transactional(readOnly = true, isolation = Isolation.REPEATABLE_READ)
    public Document of(UUID flyer) {
        ByteArrayOutputStream bytes = new ByteArrayOutputStream();
        try (JsonGenerator out = begun(bytes)) {
            tables(out, flyer);
            int leftOut = photos.count();
            if (leftOut > 0) {
                out.writeNumberProperty(PhotoRows.LEFT_OUT, leftOut);
            }
            out.writeEndObject();
        }
        return new Document(bytes, null);
    }

    /**
     * The photos too, as many as an import takes in one document.
     *
     * @param flyer whose
     * @param after null for everything and the first photos; else after which test's photo to go on, with photos alone
     */
    @Transactional(readOnly = true, isolation = Isolation.REPEATABLE_READ)
    public Document withPhotos(UUID flyer, @Nullable UUID after) {
        ByteArrayOutputStream bytes = new ByteArrayOutputStream();
        UUID next;
        try (JsonGenerator out = begun(bytes)) {
            if (after == null) {
                tables(out, flyer);
            }
            next = photos.write(out, bytes, after);
            out.writeEndObject();
        }
        return new Document(bytes, next);
    }

    private JsonGenerator begun(ByteArrayOutputStream bytes) {
        JsonGenerator out = json.createGenerator(bytes);
        out.writeStartObject();
        out.writeStringProperty("format", FORMAT);
        out.writeNumberProperty("version", VERSION);
        return out;
    }

    private void tables(JsonGenerator out, UUID flyer) {
        for (Table table : Table.ALL) {
            out.writeArrayPropertyStart(table.field());
            // Row by row: all of them as a tree would take many times the memory of the document.
            forEach(table, flyer, row -> json.writeTree(out, shown(table, row)));
            out.writeEndArray();
        }
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
