package org.sunder.exchange;

import org.jspecify.annotations.Nullable;

/**
 * A column of an exported table.
 *
 * @param name in the database
 * @param form its values
 * @param optional whether it may be absent
 * @param absent what it is where it is absent, or null for nothing
 */
record Column(
        String name, Form form, boolean optional, @Nullable Object absent) {

    static Column needed(String name, Form form) {
        return new Column(name, form, false, null);
    }

    static Column optional(String name, Form form) {
        return new Column(name, form, true, null);
    }

    /** One that exports did not always have. */
    static Column since(String name, Form form, Object absent) {
        return new Column(name, form, true, absent);
    }

    /** Its name in an export. */
    String field() {
        StringBuilder field = new StringBuilder();
        boolean upper = false;
        for (int i = 0; i < name.length(); i++) {
            char c = name.charAt(i);
            if (c == '_') {
                upper = true;
            } else {
                field.append(upper ? Character.toUpperCase(c) : c);
                upper = false;
            }
        }
        return field.toString();
    }
}
