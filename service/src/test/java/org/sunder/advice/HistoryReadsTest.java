package org.sunder.advice;

import static org.assertj.core.api.Assertions.assertThat;

import jakarta.persistence.EntityManagerFactory;
import org.hibernate.SessionFactory;
import org.hibernate.stat.Statistics;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import org.sunder.Client;
import org.sunder.Samples;
import org.sunder.ServiceTest;

/** A history costs what its airframe's own log holds, however large the fleet. */
@ServiceTest
class HistoryReadsTest {

    @Autowired
    Client client;

    @Autowired
    EntityManagerFactory factory;

    @Test
    void readsNoTestOfAnotherAirframe() {
        Statistics statistics = factory.unwrap(SessionFactory.class).getStatistics();
        statistics.setStatisticsEnabled(true);
        String airframe = airframe(2);
        statistics.clear();
        assertThat(client.get(airframe + "/history").body().path("entries")).hasSize(4);
        long rows = statistics.getEntityLoadCount();
        long statements = statistics.getPrepareStatementCount();
        airframe(3);
        statistics.clear();
        assertThat(client.get(airframe + "/history").body().path("entries")).hasSize(4);
        assertThat(statistics.getEntityLoadCount()).isEqualTo(rows);
        assertThat(statistics.getPrepareStatementCount()).isEqualTo(statements);
    }

    /** Address of a new airframe with one joint and so many tests. */
    private String airframe(int tests) {
        String airframe = client.airframe();
        String joint = client.joint(airframe);
        for (int i = 0; i < tests; i++) {
            client.post(joint + "/ground-tests", Samples.test("0.85", "partial"));
        }
        return airframe;
    }
}
