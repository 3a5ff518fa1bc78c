package org.sunder.page;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Arrays;
import java.util.List;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Which rockets stand across the first page: no half of a row is left empty. */
class WideRocketsTest {

    @ParameterizedTest
    @CsvSource({
        "2, w",
        "1, w",
        "1 1, hh",
        "1 1 1, hhw",
        "1 2, ww",
        "2 1 1 2, whhw",
        "1 1 1 2 1, hhwww",
        "0 1 3, hhw",
        "2 0, ww"
    })
    void thoseOfSeveralJointsAndWhicheverWouldStandAlone(String joints, String across) {
        List<Boolean> wide = StartPages.wide(
                Arrays.stream(joints.split(" ", -1)).map(Integer::valueOf).toList());
        StringBuilder drawn = new StringBuilder();
        wide.forEach(each -> drawn.append(each ? 'w' : 'h'));
        assertThat(drawn).hasToString(across);
    }
}
