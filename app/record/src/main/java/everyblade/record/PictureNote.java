package everyblade.record;

import everyblade.fact.Fact;
import java.util.Optional;

/** What a person should know of a picture that an entry names. */
public sealed interface PictureNote extends Fact {

    /** There is none that can be read, so only its name is kept. */
    record NotThere(String file) implements PictureNote {}

    /**
     * It is kept, but not as it was named.
     *
     * @param damage what is wrong with it
     * @param as the name under which it is kept, if that is another one
     */
    record Kept(Optional<Fact> damage, Optional<String> as) implements PictureNote {}

    /** One of these, told where it is not clear about which entry it is. */
    record OfEntry(int entry, PictureNote note) implements PictureNote {}
}
