package org.sunder;

import static com.tngtech.archunit.base.DescribedPredicate.describe;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.classes;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noClasses;
import static com.tngtech.archunit.library.Architectures.layeredArchitecture;
import static org.assertj.core.api.Assertions.assertThat;

import com.tngtech.archunit.core.domain.JavaAccess;
import com.tngtech.archunit.core.domain.JavaClasses;
import com.tngtech.archunit.core.importer.ClassFileImporter;
import com.tngtech.archunit.core.importer.ImportOption;
import com.tngtech.archunit.lang.ArchRule;
import com.tngtech.archunit.lang.conditions.ArchConditions;
import java.security.SecureRandom;
import java.util.Collections;
import java.util.Date;
import java.util.List;
import java.util.Random;
import java.util.Set;
import java.util.SplittableRandom;
import java.util.UUID;
import java.util.concurrent.ThreadLocalRandom;
import java.util.stream.DoubleStream;
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

    /** Each subject knows only those it stands on, and nobody else sees how faults are gathered. */
    @Test
    void theRoomsOfPhysicsStandOnEachOther() {
        layeredArchitecture()
                .consideringOnlyDependenciesInLayers()
                .layer("shared")
                .definedBy("org.sunder.engine.physics")
                .layer("cavity")
                .definedBy("org.sunder.engine.physics.cavity")
                .layer("retention")
                .definedBy("org.sunder.engine.physics.retention")
                .layer("charge")
                .definedBy("org.sunder.engine.physics.charge")
                .layer("flight")
                .definedBy("org.sunder.engine.physics.flight")
                .layer("packing")
                .definedBy("org.sunder.engine.physics.packing")
                .whereLayer("shared")
                .mayNotAccessAnyLayer()
                .whereLayer("cavity")
                .mayOnlyAccessLayers("shared")
                .whereLayer("retention")
                .mayOnlyAccessLayers("shared")
                .whereLayer("charge")
                .mayOnlyAccessLayers("shared", "cavity", "retention")
                .whereLayer("flight")
                .mayOnlyAccessLayers("shared", "charge", "retention")
                .whereLayer("packing")
                .mayOnlyAccessLayers("shared", "cavity")
                .check(ENGINE);
        noClasses()
                .that()
                .resideOutsideOfPackage("org.sunder.engine.physics..")
                .should()
                .dependOnClassesThat()
                .haveNameMatching(
                        "org\\.sunder\\.engine\\.physics\\.(Faults|Solids|\\w+\\.(Ceilings|Passage|Separations|ContentCheck|SegmentCheck|RetentionCheck))")
                .check(new ClassFileImporter()
                        .withImportOption(ImportOption.Predefined.DO_NOT_INCLUDE_TESTS)
                        .importPackages("org.sunder"));
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

    /** What the classes of the package and beneath it may know: themselves, the pure parts of the JDK, mathematics. */
    private static ArchRule onlyIn(String itself) {
        return classes()
                .that()
                .resideInAPackage(itself + "..")
                .should()
                .onlyDependOnClassesThat()
                .resideInAnyPackage(
                        itself + "..",
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
    }

    @Test
    void engineKnowsOnlyTheJdkItselfAndMathematics() {
        onlyIn("org.sunder.engine").check(ENGINE);
    }

    /** A class that breaks no rule, so that the rules are not broken by everything. */
    @Test
    void theRulesSeeNothingInAPureClass() {
        JavaClasses pure = new ClassFileImporter().importClasses(Computed.class);
        PURE.check(pure);
        onlyIn(Computed.class.getPackageName()).check(pure);
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
                Environment.class,
                DrawnByThread.class,
                DrawnSecurely.class,
                Referred.class
            })
    void theRuleSeesEachOfThem(Class<?> impure) {
        JavaClasses planted = new ClassFileImporter().importClasses(impure);
        assertThat(PURE.evaluate(planted).hasViolation()
                        || onlyIn(impure.getPackageName()).evaluate(planted).hasViolation())
                .isTrue();
    }

    static final class Computed {
        double value() {
            return FastMath.sqrt(Math.abs(-2.0));
        }
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

    static final class DrawnByThread {
        double value() {
            return ThreadLocalRandom.current().nextDouble();
        }
    }

    static final class DrawnSecurely {
        double value() {
            return new SecureRandom().nextDouble();
        }
    }

    static final class Referred {
        DoubleStream value() {
            return DoubleStream.generate(Math::random);
        }
    }
}
