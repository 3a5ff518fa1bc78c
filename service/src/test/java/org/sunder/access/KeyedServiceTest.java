package org.sunder.access;

import java.lang.annotation.ElementType;
import java.lang.annotation.Retention;
import java.lang.annotation.RetentionPolicy;
import java.lang.annotation.Target;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.extension.ExtendWith;
import org.springframework.boot.test.context.SpringBootTest;
import org.springframework.context.annotation.Import;
import org.springframework.test.context.ContextConfiguration;
import org.springframework.test.context.TestExecutionListeners;
import org.sunder.Client;
import org.sunder.EmptyLog;
import org.sunder.TestDatabase;
import org.sunder.postgres.NeedsContainers;

/** The whole service with keys on; one context for all tests that ask for it. */
@Target(ElementType.TYPE)
@Retention(RetentionPolicy.RUNTIME)
@Tag("service")
@ExtendWith(NeedsContainers.class)
@SpringBootTest(
        webEnvironment = SpringBootTest.WebEnvironment.RANDOM_PORT,
        properties = {
            "sunder.access.keys=true",
            "sunder.access.hosts=club.example.org",
            "server.forward-headers-strategy=native",
            "sunder.access.requests-per-minute=100000",
            "sunder.data-folder=target/keyed${sunder.test.fork:}"
        })
@ContextConfiguration(initializers = TestDatabase.class)
@Import({Client.class, EmptyLog.class})
@TestExecutionListeners(
        listeners = EmptyLog.BeforeEachClass.class,
        mergeMode = TestExecutionListeners.MergeMode.MERGE_WITH_DEFAULTS)
public @interface KeyedServiceTest {}
