package org.sunder;

import static com.tngtech.archunit.core.domain.JavaClass.Predicates.resideInAPackage;

import org.junit.jupiter.api.Test;
import org.springframework.modulith.core.ApplicationModules;

/** The walls between the features: no cycles, nothing reaches into another feature's persistence or web. */
class ModulesTest {

    @Test
    void featuresKeepToTheirWalls() {
        ApplicationModules.of(SunderApplication.class, resideInAPackage("org.sunder.engine.."))
                .verify();
    }
}
