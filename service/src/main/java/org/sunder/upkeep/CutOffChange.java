package org.sunder.upkeep;

import java.io.IOException;
import java.nio.file.Path;
import org.springframework.context.ApplicationContextInitializer;
import org.springframework.context.ConfigurableApplicationContext;

/** Before a database is opened: whether a process ended within a change of its tables. */
class CutOffChange implements ApplicationContextInitializer<ConfigurableApplicationContext> {

    @Override
    public void initialize(ConfigurableApplicationContext context) {
        String folder = context.getEnvironment().getProperty("sunder.data-folder");
        if (folder != null) {
            Path place = Path.of(folder);
            try {
                ChangeMark.bringBack(place);
            } catch (IOException e) {
                throw new NotBroughtBack(place, e);
            }
        }
    }
}
