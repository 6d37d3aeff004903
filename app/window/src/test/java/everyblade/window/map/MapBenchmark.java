package everyblade.window.map;

import everyblade.core.coverage.Coverage;
import everyblade.picture.ScreenKind;
import java.awt.Graphics2D;
import java.awt.image.BufferedImage;
import java.util.concurrent.TimeUnit;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Param;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;

/** The map of the largest engine, 20,736 cells, on a component of 1280 by 800 units, painted into an image. */
@State(Scope.Thread)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MILLISECONDS)
public class MapBenchmark {

    private static final int WIDTH = 1280;
    private static final int HEIGHT = 800;

    @Param({"1", "2"})
    public double scale;

    @Param({"RINGS", "STRIPS"})
    public ScreenKind kind;

    private Coverage[] coverages;
    private Graphics2D screen;
    private CellPanel panel;
    private int turn;

    @Setup
    public void open() {
        Jobs job = Jobs.corncrake();
        Coverage before = job.coverage();
        Coverage oneCell = job.enter("saw tip/pressure/leading 70 photo a.jpg").coverage();
        Coverage turned = job.enter("skip on 33").coverage();
        coverages = new Coverage[] {before, oneCell, turned};
        screen = new BufferedImage((int) (WIDTH * scale), (int) (HEIGHT * scale), BufferedImage.TYPE_INT_RGB)
                .createGraphics();
        screen.scale(scale, scale);
        panel = opened();
    }

    private CellPanel opened() {
        CellPanel opened = new CellPanel(kind);
        opened.setSize(WIDTH, HEIGHT);
        opened.lookInto("c12");
        opened.show(coverages[0]);
        opened.paint(screen);
        return opened;
    }

    /** From a new component to its first picture. */
    @Benchmark
    public CellPanel firstDrawing() {
        return opened();
    }

    /** From a coverage in which one cell is otherwise to the picture. */
    @Benchmark
    public void oneChangedCell() {
        turn = 1 - turn;
        panel.show(coverages[turn]);
        panel.paint(screen);
    }

    /** From a coverage after which every row of the spool stands elsewhere to the picture. */
    @Benchmark
    public void turned() {
        turn = 2 - turn;
        panel.show(coverages[turn]);
        panel.paint(screen);
    }

    /** The same picture again. */
    @Benchmark
    public void fromTheCache() {
        panel.paint(screen);
    }
}
