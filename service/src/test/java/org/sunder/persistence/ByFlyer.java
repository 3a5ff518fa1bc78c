package org.sunder.persistence;

import java.util.Collection;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * Tells of a statement whether one flyer's rows are all that it asks for, so that it stays on one shard where tables are laid out by
 * flyer. It reads no more of SQL than this service writes; what it cannot read it takes for crossing.
 */
final class ByFlyer {

    private static final Pattern TABLE =
            Pattern.compile("\\b(?:from|join|into|update)\\s+([a-z_][a-z_0-9]*)(?:\\s+(?:as\\s+)?([a-z][a-z_0-9]*))?");
    private static final Set<String> NO_ALIAS = Set.of(
            "where", "set", "on", "left", "inner", "join", "order", "values", "fetch", "for", "group", "offset",
            "limit");
    private static final String FLYERS = "flyer";

    private final Set<String> tables;

    /**
     * A layout.
     *
     * @param tables names of those whose key begins with a flyer's
     */
    ByFlyer(Collection<String> tables) {
        this.tables = Set.copyOf(tables);
    }

    /** Those of some statements that ask for more than one flyer's rows. */
    List<String> crossing(Collection<String> statements) {
        return statements.stream().filter(this::crosses).toList();
    }

    private boolean crosses(String written) {
        String sql = narrowed(written.toLowerCase(Locale.ROOT).replace("\"", "").replaceAll("\\s+", " "));
        boolean touches = false;
        int withoutAlias = 0;
        Matcher table = TABLE.matcher(sql);
        while (table.find()) {
            String name = table.group(1);
            if (!isByFlyer(name)) {
                continue;
            }
            touches = true;
            boolean named = table.group(2) != null && !NO_ALIAS.contains(table.group(2));
            String rest = sql.substring(named ? table.end() : table.end(1)).stripLeading();
            if (rest.startsWith(",") || !isNarrowed(sql, name, named ? table.group(2) : "")) {
                return true;
            }
            if (!named && !name.equals(FLYERS) && !sql.startsWith("insert")) {
                withoutAlias++;
            }
        }
        // One condition without an alias narrows one table.
        long given = found("(?<![a-z_0-9.])flyer_id ?= ?\\?", sql);
        return touches && (found("\\bor\\b", sql) > 0 || given < withoutAlias);
    }

    /** Without alternatives in brackets: beside the flyer's key they only narrow. One that is left could widen. */
    private static String narrowed(String sql) {
        return sql.replaceAll("\\((?![^()]*\\bselect\\b)[^()]*\\bor\\b[^()]*\\)", "(...)");
    }

    private boolean isByFlyer(String table) {
        return tables.contains(table) || table.equals(FLYERS);
    }

    /** Whether the rows wanted of a table are those of a flyer who is given, or of the flyer of a table that is so narrowed. */
    private static boolean isNarrowed(String sql, String table, String alias) {
        String key = table.equals(FLYERS) ? "id" : "flyer_id";
        if (sql.startsWith("insert into " + table + " ")) {
            return sql.matches("insert into " + table + " ?\\((?:[a-z_0-9]+, ?)*" + key + "[,)].*");
        }
        String column = "(?<![a-z_0-9.])" + (alias.isEmpty() ? key : alias + "\\." + key);
        String joined = column + " ?= ?[a-z_0-9]+\\.flyer_id\\b|\\.flyer_id ?= ?" + column + "\\b";
        return found(column + " ?= ?\\?", sql) > 0 || (found(joined, sql) > 0 && found("\\bflyer_id ?= ?\\?", sql) > 0);
    }

    private static long found(String pattern, String sql) {
        return Pattern.compile(pattern).matcher(sql).results().count();
    }
}
