package org.sunder.start;

import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import org.springframework.context.ApplicationContextInitializer;
import org.springframework.context.ConfigurableApplicationContext;
import org.springframework.core.env.ConfigurableEnvironment;
import org.springframework.core.env.EnumerablePropertySource;
import org.springframework.core.env.PropertySource;
import org.springframework.core.env.StandardEnvironment;

/** Looks at settings before anything is opened, so that a wrong one is refused at once and by its name. */
class SettingChecks implements ApplicationContextInitializer<ConfigurableApplicationContext> {

    /** The service's own settings. */
    static final List<String> KNOWN = List.of(
            "sunder.data-folder",
            "sunder.database-url",
            "sunder.access.keys",
            "sunder.access.hosts",
            "sunder.access.requests-per-minute",
            "sunder.access.failed-keys-per-minute");

    private static final int LARGEST_PORT = 65535;
    // Tools around the service name variables of their own so: only what bears on safety is strict there.
    private static final Set<String> SHARED = Set.of(
            StandardEnvironment.SYSTEM_ENVIRONMENT_PROPERTY_SOURCE_NAME,
            StandardEnvironment.SYSTEM_PROPERTIES_PROPERTY_SOURCE_NAME);
    private static final String URL = "spring.datasource.url";

    @Override
    public void initialize(ConfigurableApplicationContext context) {
        ConfigurableEnvironment environment = context.getEnvironment();
        for (PropertySource<?> source : environment.getPropertySources()) {
            if (source instanceof EnumerablePropertySource<?> listed) {
                String strict = SHARED.contains(source.getName()) ? "sunderaccess" : "sunder";
                Arrays.stream(listed.getPropertyNames())
                        .filter(name -> letters(name).startsWith(strict))
                        .forEach(SettingChecks::known);
            }
        }
        port(environment.getProperty("server.port"));
        database(environment.getProperty(URL), environment.getProperty("sunder.database-url") != null);
    }

    private static void known(String name) {
        String letters = letters(name);
        if (KNOWN.stream().noneMatch(known -> letters(known).equals(letters))) {
            throw new RefusedSetting(name, "there is no such setting; there are " + String.join(", ", KNOWN));
        }
    }

    /** The same for {@code sunder.access.hosts[0]}, {@code SUNDER_ACCESS_HOSTS_0} and {@code sunder.access.hosts}. */
    private static String letters(String name) {
        return name.toLowerCase(Locale.ROOT).replaceAll("[^a-z]", "");
    }

    private static void port(@Nullable String value) {
        if (value != null && (!value.matches("-?\\d{1,5}") || Integer.parseInt(value) > LARGEST_PORT)) {
            throw new RefusedSetting("server.port", "'" + value + "' is not a whole number from 0 to " + LARGEST_PORT);
        }
    }

    /** The value stays unsaid: it may hold a password. */
    private static void database(@Nullable String url, boolean own) {
        if (url != null && !url.startsWith("jdbc:h2:") && !url.startsWith("jdbc:postgresql:")) {
            throw new RefusedSetting(
                    own ? "sunder.database-url" : URL, "does not begin with jdbc:postgresql: (or jdbc:h2:)");
        }
    }
}
