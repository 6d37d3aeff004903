package everyblade.window;

import everyblade.fleet.StoreRefusal;
import everyblade.session.around.Surroundings;
import everyblade.session.fleet.ShopStore;
import everyblade.window.view.StoreFollowing;
import everyblade.words.Words;
import java.nio.file.Path;
import java.util.Optional;
import java.util.function.Supplier;
import javax.swing.JComponent;
import net.miginfocom.swing.MigLayout;

/** Tells at the lower edge how far the job that is worked on is on the shop's store, if it is to be kept there as well. */
final class Following {

    private final Supplier<Door> doors;
    private final Surroundings around;
    private final javax.swing.JPanel panel = new javax.swing.JPanel(new MigLayout("insets 2 10 2 10", "[grow]"));
    private final Paragraph line = new Paragraph();
    private Optional<StoreFollowing> now = Optional.empty();

    /**
     * @param doors makes a door of its own, since whatever goes through it waits most of the time
     * @param around the world outside, where the password may be
     */
    Following(Supplier<Door> doors, Surroundings around) {
        this.doors = doors;
        this.around = around;
        line.setName("follow");
        panel.add(line, "growx, wmin 0");
        panel.setVisible(false);
    }

    JComponent component() {
        return panel;
    }

    /** Begins, instead of whatever was followed before. */
    void begin(String address, Path job, Words words) {
        end();
        panel.setVisible(true);
        try {
            StoreFollowing following = new StoreFollowing(
                    ShopStore.at(address, around.environment(), Optional.empty()),
                    around.speaking(words.locale()),
                    job,
                    words.say("fleet.follow.place"));
            now = Optional.of(following);
            line.say(words.say("fleet.follow.begins"));
            again(following, doors.get(), words);
        } catch (StoreRefusal refusal) {
            line.say(words.say("fleet.follow.off", ShopStore.told(refusal, words)));
        }
    }

    private void again(StoreFollowing following, Door door, Words words) {
        door.run("", following::next, news -> {
            if (following.isEnded()) {
                door.close();
                return;
            }
            line.say(told(news, words));
            again(following, door, words);
        });
    }

    private static String told(StoreFollowing.News news, Words words) {
        if (news instanceof StoreFollowing.News.AsOf asOf) {
            return asOf.lacking() == 0
                    ? words.say("fleet.follow.asOf", asOf.entry())
                    : words.say("fleet.follow.ahead", asOf.entry(), asOf.lacking());
        }
        return words.say("fleet.follow.off", ShopStore.told(((StoreFollowing.News.Refused) news).why(), words));
    }

    /** There is something new in the job. */
    void nudge() {
        now.ifPresent(StoreFollowing::nudge);
    }

    void end() {
        now.ifPresent(StoreFollowing::close);
        now = Optional.empty();
        panel.setVisible(false);
    }
}
