package org.sunder;

import org.springframework.boot.json.JsonWriter.Members;
import org.springframework.boot.json.JsonWriter.ValueProcessor;
import org.springframework.boot.logging.structured.StructuredLoggingJsonMembersCustomizer;

/** JSON need not escape the line breaks of Unicode, but readers of logs split at them. */
class UnbrokenLines implements StructuredLoggingJsonMembersCustomizer<Object> {

    @Override
    public void customize(Members<Object> members) {
        members.applyingValueProcessor(
                ValueProcessor.of(String.class, text -> text.replaceAll("[\\u0085\\u2028\\u2029]", " ")));
    }
}
