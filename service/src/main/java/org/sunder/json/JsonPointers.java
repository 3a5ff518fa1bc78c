package org.sunder.json;

import tools.jackson.core.JsonPointer;

/** JSON pointers, RFC 6901. */
final class JsonPointers {

    private JsonPointers() {}

    /** The pointer of a field of the object at another pointer. */
    static String under(String pointer, String field) {
        return JsonPointer.compile(pointer).appendProperty(field).toString();
    }
}
