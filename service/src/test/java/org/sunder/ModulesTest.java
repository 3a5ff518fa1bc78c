package org.sunder;

import static com.tngtech.archunit.base.DescribedPredicate.describe;
import static com.tngtech.archunit.core.domain.JavaClass.Predicates.resideInAPackage;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noClasses;

import com.tngtech.archunit.core.importer.ClassFileImporter;
import com.tngtech.archunit.core.importer.ImportOption;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.springframework.modulith.core.ApplicationModules;

/**
 * The walls between the features: no cycles, nothing reaches into another feature's persistence or web; and nothing that may wait
 * runs where all parallel streams do.
 */
class ModulesTest {

    private static final Pattern HANDS_OVER = Pattern.compile("parallel.*|.*Async|commonPool");

    @Test
    void featuresKeepToTheirWalls() {
        ApplicationModules.of(SunderApplication.class, resideInAPackage("org.sunder.engine.."))
                .verify();
    }

    /**
     * The workers of the common pool are as many as the cores but one. While one waits for a turn, whoever has the turn may wait
     * for that worker.
     */
    @Test
    void onlyTheEngineWhichNeverWaitsUsesTheCommonPool() {
        noClasses()
                .that()
                .resideOutsideOfPackage("org.sunder.engine..")
                .should()
                .callMethodWhere(describe(
                        "hands work to the common pool",
                        call -> call.getTarget().getOwner().getPackageName().startsWith("java.util")
                                && HANDS_OVER
                                        .matcher(call.getTarget().getName())
                                        .matches()))
                .check(new ClassFileImporter()
                        .withImportOption(ImportOption.Predefined.DO_NOT_INCLUDE_TESTS)
                        .importPackages("org.sunder"));
    }
}
