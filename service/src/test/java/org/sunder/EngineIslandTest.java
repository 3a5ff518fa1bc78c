package org.sunder;

import static com.tngtech.archunit.base.DescribedPredicate.describe;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.classes;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noClasses;
import static org.assertj.core.api.Assertions.assertThat;

import com.tngtech.archunit.core.domain.JavaAccess;
import com.tngtech.archunit.core.domain.JavaClasses;
import com.tngtech.archunit.core.importer.ClassFileImporter;
import com.tngtech.archunit.core.importer.ImportOption;
import com.tngtech.archunit.lang.ArchRule;
import com.tngtech.archunit.lang.conditions.ArchConditions;
import java.util.Collections;
import java.util.Date;
import java.util.List;
import java.util.Random;
import java.util.Set;
import java.util.SplittableRandom;
import java.util.UUID;
import org.hipparchus.random.Well19937c;
import org.hipparchus.util.FastMath;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** The engine depends on nothing but the JDK's pure parts, itself, JSpecify and Hipparchus: an allow-list. */
class EngineIslandTest {

    private static final JavaClasses ENGINE = new ClassFileImporter()
            .withImportOption(ImportOption.Predefined.DO_NOT_INCLUDE_TESTS)
            .importPackages("org.sunder.engine");

    /** Of the packages allowed, the classes that read a clock, draw, name at random, start something or write. */
    private static final Set<String> IMPURE_CLASSES = Set.of(
            "java.io.PrintStream",
            "java.lang.Process",
            "java.lang.ProcessBuilder",
            "java.lang.ProcessHandle",
            "java.lang.Runtime",
            "java.lang.Thread",
            "java.lang.ThreadLocal",
            "java.util.Calendar",
            "java.util.Date",
            "java.util.GregorianCalendar",
            "java.util.Random",
            "java.util.Scanner",
            "java.util.SplittableRandom",
            "java.util.TimeZone",
            "java.util.Timer",
            "java.util.UUID");

    /** The same of the methods of classes that are otherwise pure. */
    private static final Set<String> IMPURE_METHODS = Set.of("random", "shuffle", "identityHashCode", "parallelSetAll");

    private static final Set<String> PURE_METHODS_OF_SYSTEM = Set.of("arraycopy");

    private static final ArchRule PURE = noClasses()
            .should(ArchConditions.accessTargetWhere(
                    describe("have a clock, a random source, a process or an output", EngineIslandTest::impure)));

    private static boolean impure(JavaAccess<?> access) {
        String owner = access.getTargetOwner().getName();
        String member = access.getTarget().getName();
        return IMPURE_CLASSES.contains(owner)
                || owner.startsWith("org.hipparchus.random.")
                || (owner.equals("java.lang.System") && !PURE_METHODS_OF_SYSTEM.contains(member))
                || (!owner.startsWith("org.sunder.") && IMPURE_METHODS.contains(member));
    }

    @Test
    void onlyThePosteriorUsesTheQuadratureAndTheModelUsesNothing() {
        noClasses()
                .that()
                .resideOutsideOfPackages(
                        "org.sunder.engine.learning.posterior", "org.sunder.engine.learning.quadrature")
                .should()
                .dependOnClassesThat()
                .resideInAPackage("org.sunder.engine.learning.quadrature")
                .check(ENGINE);
        noClasses()
                .that()
                .resideInAnyPackage("org.sunder.engine.learning.model", "org.sunder.engine.learning.quadrature")
                .should()
                .dependOnClassesThat()
                .resideInAPackage("org.sunder.engine.learning.posterior")
                .check(ENGINE);
        noClasses()
                .that()
                .resideInAPackage("org.sunder.engine.learning.quadrature")
                .should()
                .dependOnClassesThat()
                .resideInAPackage("org.sunder.engine.learning.model")
                .check(ENGINE);
    }

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
        PURE.check(ENGINE);
    }

    @ParameterizedTest
    @ValueSource(
            classes = {
                MathRandom.class,
                FastMathRandom.class,
                Nanos.class,
                Millis.class,
                Drawn.class,
                Split.class,
                WellDrawn.class,
                Named.class,
                Dated.class,
                Shuffled.class,
                Printed.class,
                Environment.class
            })
    void theRuleSeesEachOfThem(Class<?> impure) {
        assertThat(PURE.evaluate(new ClassFileImporter().importClasses(impure)).hasViolation())
                .isTrue();
    }

    static final class MathRandom {
        double value() {
            return Math.random();
        }
    }

    static final class FastMathRandom {
        double value() {
            return FastMath.random();
        }
    }

    static final class Nanos {
        long value() {
            return System.nanoTime();
        }
    }

    static final class Millis {
        long value() {
            return System.currentTimeMillis();
        }
    }

    static final class Drawn {
        double value() {
            return new Random(1).nextDouble();
        }
    }

    static final class Split {
        double value() {
            return new SplittableRandom(1).nextDouble();
        }
    }

    static final class WellDrawn {
        double value() {
            return new Well19937c(1).nextDouble();
        }
    }

    static final class Named {
        UUID value() {
            return UUID.randomUUID();
        }
    }

    @SuppressWarnings("JavaUtilDate")
    static final class Dated {
        long value() {
            return new Date().getTime();
        }
    }

    static final class Shuffled {
        void value(List<String> list) {
            Collections.shuffle(list);
        }
    }

    @SuppressWarnings("SystemOut")
    static final class Printed {
        void value() {
            System.out.println();
        }
    }

    static final class Environment {
        String value() {
            return System.getenv("HOME");
        }
    }
}
