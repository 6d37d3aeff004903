package everyblade.core.entry;

import everyblade.fact.Fact;
import java.util.List;

/** Why a setting cannot be as it is given. Numbers are as they are typed. */
sealed interface SettingProblem extends Fact {

    /** @param there names of all settings */
    record Unknown(String name, List<String> there) implements SettingProblem {}

    /** A value less than the least, or greater than the greatest. */
    record OutOfRange(String name, Settings.Meaning meaning, String least, String most, String value)
            implements SettingProblem {}
}
