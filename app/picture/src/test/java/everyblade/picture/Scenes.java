package everyblade.picture;

import everyblade.picture.scene.Cell;
import everyblade.picture.scene.DrawnShape.Patch;
import everyblade.picture.scene.DrawnShape.Text;
import everyblade.picture.scene.Item;
import everyblade.picture.scene.Polar;
import everyblade.picture.scene.Scene;
import java.util.List;
import java.util.Optional;

/** Questions that tests ask a scene. */
final class Scenes {

    private Scenes() {}

    static Scene of(Job job) {
        return MapScene.of(job.coverage(), job.facts(), Optional.empty(), MapStyle.PLAIN);
    }

    static Scene of(Job job, String row) {
        return MapScene.of(job.coverage(), job.facts(), Optional.of(row), MapStyle.PLAIN);
    }

    /** The cells on rings, or those in strips. */
    static List<Item> cells(Scene scene, boolean onRings) {
        return scene.items()
                .filter(item -> item.cell().isPresent())
                .filter(item -> patch(item).frame() instanceof Polar == onRings)
                .toList();
    }

    static Patch patch(Item item) {
        return (Patch) item.shape();
    }

    static Patch patch(Scene scene, String row, int airfoil, int zone) {
        return cells(scene, true).stream()
                .filter(item -> item.cell().equals(Optional.of(new Cell(row, airfoil, zone))))
                .map(Scenes::patch)
                .findFirst()
                .orElseThrow();
    }

    /** All words on the sheet, one text after the other. */
    static List<String> words(Scene scene) {
        return texts(scene).stream().map(Text::words).toList();
    }

    static List<Text> texts(Scene scene) {
        return scene.items()
                .filter(item -> item.shape() instanceof Text)
                .map(item -> (Text) item.shape())
                .toList();
    }
}
