package org.sunder.exchange;

/**
 * A column of an exported table.
 *
 * @param name in the database
 * @param form its values
 * @param optional whether it may be absent
 */
record Column(String name, Form form, boolean optional) {

    static Column needed(String name, Form form) {
        return new Column(name, form, false);
    }

    static Column optional(String name, Form form) {
        return new Column(name, form, true);
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
