package org.sunder.web;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.OffsetDateTime;
import java.time.ZoneOffset;
import java.util.UUID;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.sunder.Client;
import org.sunder.Samples;
import org.sunder.ServiceTest;

/** A phone that syncs within 90 days finds what it entered; afterwards its key is free again. */
@ServiceTest
class KeptAnswersTest {

    @Autowired
    Client client;

    @Autowired
    JdbcClient jdbc;

    @Autowired
    KeptAnswers answers;

    @Test
    void areKeptForNinetyDays() {
        String late = UUID.randomUUID().toString();
        String tooLate = UUID.randomUUID().toString();
        String first = entered(late);
        String other = entered(tooLate);
        made(late, 89);
        made(tooLate, 91);
        assertThat(answers.letGo()).isEqualTo(1);
        assertThat(entered(late)).isEqualTo(first);
        assertThat(entered(tooLate)).isNotEqualTo(other);
    }

    private String entered(String key) {
        return client.post("/api/airframes", Samples.AIRFRAME, "Idempotency-Key", key)
                .header("Location");
    }

    private void made(String key, int daysAgo) {
        jdbc.sql("update idempotent_answer set created_at = ? where idempotency_key = ?")
                .params(OffsetDateTime.now(ZoneOffset.UTC).minusDays(daysAgo), key)
                .update();
    }
}
