package org.sunder.access;

import jakarta.validation.constraints.Positive;
import java.util.List;
import org.springframework.boot.context.properties.ConfigurationProperties;
import org.springframework.boot.context.properties.bind.DefaultValue;
import org.springframework.validation.annotation.Validated;

/**
 * Settings of access, {@code sunder.access.*}.
 *
 * @param keys whether every request needs a key; must be true where others can reach the service
 * @param hosts names by which the service may be called, besides addresses and localhost
 * @param requestsPerMinute most requests of one key, and of one address without a key
 * @param failedKeysPerMinute most keys that one address may get wrong
 */
@ConfigurationProperties("sunder.access")
@Validated
public record AccessSettings(
        @DefaultValue("false") boolean keys,
        @DefaultValue List<String> hosts,
        @DefaultValue("600") @Positive int requestsPerMinute,
        @DefaultValue("10") @Positive int failedKeysPerMinute) {}
