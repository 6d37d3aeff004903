package everyblade.core.turning;

import static org.assertj.core.api.Assertions.assertThat;

import everyblade.core.turning.Remark.What;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

class RemarkTest {

    @ParameterizedTest
    @EnumSource
    void saysWhatItIsAndOnlyWhoAcceptsWhatNoViewShowsSaysAlsoThatItIsAccepted(What what) {
        for (What other : What.values()) {
            assertThat(what.says(other))
                    .as("%s says %s", what, other)
                    .isEqualTo(what.equals(other)
                            || what.name().equals("ACCEPTED_UNSHOWN")
                                    && other.name().equals("ACCEPTED"));
        }
    }
}
