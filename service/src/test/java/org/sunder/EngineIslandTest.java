package org.sunder;

import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.classes;

import com.tngtech.archunit.core.domain.JavaClasses;
import com.tngtech.archunit.core.importer.ClassFileImporter;
import com.tngtech.archunit.core.importer.ImportOption;
import com.tngtech.archunit.lang.ArchRule;
import org.junit.jupiter.api.Test;

/** The engine depends on nothing but the JDK's pure parts, itself, JSpecify and Hipparchus: an allow-list. */
class EngineIslandTest {

    private static final JavaClasses ENGINE = new ClassFileImporter()
            .withImportOption(ImportOption.Predefined.DO_NOT_INCLUDE_TESTS)
            .importPackages("org.sunder.engine");

    @Test
    void engineKnowsOnlyTheJdkItselfAndMathematics() {
        ArchRule rule = classes()
                .that()
                .resideInAPackage("org.sunder.engine..")
                .should()
                .onlyDependOnClassesThat()
                .resideInAnyPackage(
                        "org.sunder.engine..",
                        "java.lang",
                        "java.lang.annotation",
                        "java.lang.invoke",
                        "java.lang.runtime",
                        "java.math",
                        "java.util",
                        "java.util.function",
                        "java.util.stream",
                        "org.jspecify.annotations",
                        "org.hipparchus..");
        rule.check(ENGINE);
    }

    @Test
    void engineHasNoClockNoRandomSourceAndNoOutput() {
        ArchRule rule = classes()
                .that()
                .resideInAPackage("org.sunder.engine..")
                .should()
                .onlyDependOnClassesThat()
                .doNotHaveFullyQualifiedName("java.util.Random")
                .andShould()
                .onlyDependOnClassesThat()
                .doNotHaveFullyQualifiedName("java.util.Date")
                .andShould()
                .onlyDependOnClassesThat()
                .doNotHaveFullyQualifiedName("java.io.PrintStream");
        rule.check(ENGINE);
    }
}
