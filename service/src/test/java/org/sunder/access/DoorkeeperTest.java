package org.sunder.access;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.springframework.boot.builder.SpringApplicationBuilder;
import org.springframework.boot.test.system.CapturedOutput;
import org.springframework.boot.test.system.OutputCaptureExtension;
import org.sunder.SunderApplication;

/** Without keys the service opens to its own machine only. */
@ExtendWith(OutputCaptureExtension.class)
class DoorkeeperTest {

    @Test
    void refusesToOpenToOthersWithoutKeysAndSaysWhatToSet(CapturedOutput output) {
        assertThatThrownBy(() -> new SpringApplicationBuilder(SunderApplication.class)
                        .run(
                                "--server.port=0",
                                "--server.address=0.0.0.0",
                                "--spring.datasource.url=jdbc:h2:mem:refused"))
                .isNotNull();
        assertThat(output.getOut())
                .contains("setting server.address: others can reach 0.0.0.0, but access keys are off.")
                .contains("SUNDER_ACCESS_KEYS=true")
                .doesNotContain("\tat org.");
    }
}
