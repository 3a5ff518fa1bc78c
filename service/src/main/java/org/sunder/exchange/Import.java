package org.sunder.exchange;

import java.io.InputStream;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.UUID;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import org.springframework.dao.DataIntegrityViolationException;
import org.springframework.jdbc.core.JdbcTemplate;
import org.springframework.stereotype.Service;
import org.sunder.persistence.DurableTransactions;
import org.sunder.persistence.FleetVersions;
import org.sunder.problem.Fault;
import org.sunder.problem.ProblemException;
import org.sunder.problem.ProblemType;
import tools.jackson.core.JsonToken;
import tools.jackson.core.exc.StreamConstraintsException;
import tools.jackson.core.exc.StreamReadException;
import tools.jackson.databind.DeserializationFeature;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

/** Takes an export in: all of it or nothing, row by row, so that a large one needs little memory. */
@Service
class Import {

    private final Export export;
    private final PhotoRows photos;
    private final Soundness soundness;
    private final RowRules rules;
    private final DurableTransactions transactions;
    private final FleetVersions versions;
    private final JdbcTemplate jdbc;
    private final JsonMapper json;

    Import(
            Export export,
            PhotoRows photos,
            Soundness soundness,
            RowRules rules,
            DurableTransactions transactions,
            FleetVersions versions,
            JdbcTemplate jdbc,
            JsonMapper json) {
        this.export = export;
        this.photos = photos;
        this.soundness = soundness;
        this.rules = rules;
        this.transactions = transactions;
        this.versions = versions;
        this.jdbc = jdbc;
        // Rows are read one by one out of a list: something always follows.
        this.json = json.rebuild()
                .disable(DeserializationFeature.FAIL_ON_TRAILING_TOKENS)
                .build();
    }

    /**
     * What an import did.
     *
     * @param added rows that were new
     * @param known rows that were there already, just the same
     */
    record Result(int added, int known) {}

    /**
     * Takes in an export of a flyer.
     *
     * @throws ProblemException 400 for what is no export and names the row, 409 where a row is there with other content
     */
    Result take(UUID flyer, InputStream body) {
        return transactions.commit(() -> {
            versions.advance(flyer);
            try (RowParser parser = new RowParser(json.createParser(body))) {
                RowRules.Later later = new RowRules.Later();
                Result result = document(flyer, parser, later);
                soundness.check(flyer);
                rules.check(later);
                return result;
            } catch (StreamReadException e) {
                String where = "line " + e.getLocation().getLineNr() + ", column "
                        + e.getLocation().getColumnNr();
                throw new ProblemException(ProblemType.MALFORMED_JSON, "Reading stopped at " + where + ".");
            } catch (StreamConstraintsException e) {
                throw new ProblemException(
                        ProblemType.MALFORMED_JSON,
                        "Something is nested deeper, or longer, than anything in an export.");
            }
        });
    }

    private Result document(UUID flyer, RowParser parser, RowRules.Later later) {
        Map<String, Table> awaited = Table.ALL.stream().collect(Collectors.toMap(Table::field, table -> table));
        if (parser.nextToken() != JsonToken.START_OBJECT) {
            throw fault("", "an export is a JSON object", "what GET /api/export gave");
        }
        boolean ours = false;
        Result total = new Result(0, 0);
        while (parser.nextToken() == JsonToken.PROPERTY_NAME) {
            String field = parser.currentName();
            parser.nextToken();
            Table table = awaited.remove(field);
            if (table != null) {
                total = rows(table, flyer, parser, total, later);
            } else if (field.equals(PhotoRows.FIELD)) {
                total = photos.take(parser, json, total);
            } else if (field.equals("format")) {
                ours = Export.FORMAT.equals(parser.getString());
            } else if (!tellsOfPhotos(field, parser)
                    && !(field.equals("version")
                            && String.valueOf(Export.VERSION).equals(parser.getString()))) {
                throw fault("/" + field, "unknown field or version", "what GET /api/export gave");
            }
        }
        if (!ours) {
            throw fault("/format", "this is no export", Export.FORMAT);
        }
        if (parser.nextToken() != null) {
            throw fault("", "something follows the export", "one JSON object");
        }
        return total;
    }

    /** What an export says of photos that it does not hold. */
    private static boolean tellsOfPhotos(String field, RowParser parser) {
        return parser.currentToken().isScalarValue()
                && (field.equals(PhotoRows.LEFT_OUT) || field.equals(PhotoRows.AFTER));
    }

    private Result rows(Table table, UUID flyer, RowParser parser, Result before, RowRules.Later later) {
        if (parser.currentToken() != JsonToken.START_ARRAY) {
            throw fault("/" + table.field(), "a list of rows is needed", "a list");
        }
        Map<Object, List<@Nullable Object>> known = new HashMap<>();
        export.rows(table, flyer).forEach(row -> known.put(String.valueOf(row.get(0)), row));
        int added = before.added();
        int same = before.known();
        for (int i = 0; parser.nextToken() != JsonToken.END_ARRAY; i++) {
            String at = "/" + table.field() + "/" + i;
            parser.beginRow(at);
            List<@Nullable Object> row = row(table, at, json.readTree(parser));
            parser.endRow();
            List<@Nullable Object> there = known.get(String.valueOf(row.get(0)));
            if (there == null) {
                rules.check(at, new RowRules.Row(table, row), later);
                insert(table, flyer, at, row);
                added++;
            } else if (there.equals(row)) {
                same++;
            } else {
                throw conflict(at, "this row is here already with other content");
            }
        }
        return new Result(added, same);
    }

    private void insert(Table table, UUID flyer, String at, List<@Nullable Object> row) {
        List<@Nullable Object> values = new ArrayList<>();
        values.add(flyer);
        values.addAll(row);
        try {
            jdbc.update(table.insert(), values.toArray());
        } catch (DataIntegrityViolationException e) {
            throw conflict(at, "this row names something that is not there, or takes the place of another row");
        }
    }

    static List<@Nullable Object> row(Table table, String at, JsonNode node) {
        Set<String> fields = table.columns().stream().map(Column::field).collect(Collectors.toSet());
        if (!node.isObject()) {
            throw fault(at, "a row is an object", "an object");
        }
        for (String field : node.propertyNames()) {
            if (!fields.contains(field)) {
                throw fault(
                        at + "/" + field,
                        "unknown field",
                        fields.stream().sorted().toList().toString());
            }
        }
        List<@Nullable Object> values = new ArrayList<>();
        for (Column column : table.columns()) {
            values.add(value(column, at, node));
        }
        return values;
    }

    private static @Nullable Object value(Column column, String at, JsonNode row) {
        JsonNode node = row.path(column.field());
        if (node.isMissingNode() && column.optional()) {
            return column.absent();
        }
        try {
            return column.form().parse().apply(node);
        } catch (IllegalArgumentException | java.time.DateTimeException e) {
            throw fault(
                    at + "/" + column.field(),
                    "the value cannot be",
                    column.form().allowed());
        }
    }

    static ProblemException fault(String pointer, String detail, String allowed) {
        return new ProblemException(
                ProblemType.INVALID_INPUT,
                pointer + ": " + detail,
                List.of(new Fault(pointer, detail, "not-allowed", allowed, null)));
    }

    static ProblemException conflict(String pointer, String detail) {
        return new ProblemException(
                ProblemType.CONFLICT,
                pointer + ": " + detail,
                List.of(new Fault(pointer, detail, "in-the-way", null, null)));
    }
}
