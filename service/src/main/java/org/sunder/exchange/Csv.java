package org.sunder.exchange;

import java.util.List;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;

/** CSV by RFC 4180. */
final class Csv {

    private final StringBuilder text = new StringBuilder();
    private final boolean raw;

    /**
     * An empty file.
     *
     * @param raw whether text that a spreadsheet would run as a formula is left as it is
     */
    Csv(boolean raw) {
        this.raw = raw;
    }

    void line(List<? extends @Nullable Object> cells) {
        text.append(cells.stream().map(this::cell).collect(Collectors.joining(",")))
                .append("\r\n");
    }

    private String cell(@Nullable Object value) {
        String cell = value == null ? "" : value.toString();
        boolean formula = value instanceof CharSequence && !cell.isEmpty() && "=+-@\t\r".indexOf(cell.charAt(0)) >= 0;
        if (formula && !raw) {
            cell = "'" + cell;
        }
        boolean quoted = cell.chars().anyMatch(c -> c == ',' || c == '"' || c == '\r' || c == '\n');
        return quoted ? "\"" + cell.replace("\"", "\"\"") + "\"" : cell;
    }

    @Override
    public String toString() {
        return text.toString();
    }
}
