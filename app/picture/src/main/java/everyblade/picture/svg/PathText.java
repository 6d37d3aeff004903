package everyblade.picture.svg;

import everyblade.picture.scene.DrawnShape.Dots;
import everyblade.picture.scene.DrawnShape.Patch;
import everyblade.picture.scene.Frame;
import everyblade.picture.scene.Point;
import everyblade.picture.scene.Polar;
import java.util.List;

/** The path data of one shape. */
final class PathText {

    private final StringBuilder text = new StringBuilder();

    /** A sector, or a rectangle. */
    static String of(Patch patch) {
        PathText path = new PathText();
        Frame frame = patch.frame();
        if (frame instanceof Polar polar && patch.to() - patch.from() >= 360) {
            path.circle(polar.centre(), patch.high(), true);
            path.circle(polar.centre(), patch.low(), false);
        } else {
            path.to('M', frame.at(patch.from(), patch.high()));
            path.side(patch, patch.to(), patch.high(), true);
            path.to('L', frame.at(patch.to(), patch.low()));
            path.side(patch, patch.from(), patch.low(), false);
            path.text.append('Z');
        }
        return path.text.toString();
    }

    /** Lines, closed or not. */
    static String of(List<List<Point>> lines, boolean closed) {
        PathText path = new PathText();
        for (List<Point> line : lines) {
            for (int i = 0; i < line.size(); i++) {
                path.to(i == 0 ? 'M' : 'L', line.get(i));
            }
            if (closed) {
                path.text.append('Z');
            }
        }
        return path.text.toString();
    }

    /** Dots. */
    static String of(Dots dots) {
        PathText path = new PathText();
        dots.centres().forEach(centre -> path.circle(centre, dots.radius(), true));
        return path.text.toString();
    }

    private void to(char command, Point point) {
        text.append(command).append(Numbers.of(point.x())).append(' ').append(Numbers.of(point.y()));
    }

    /** The long side of a patch at one height, towards a place along the row. */
    private void side(Patch patch, double along, double across, boolean forwards) {
        if (patch.frame() instanceof Polar polar) {
            arc(across, patch.to() - patch.from() > 180, forwards != polar.mirrored(), polar.at(along, across));
        } else {
            to('L', patch.frame().at(along, across));
        }
    }

    /** Two half circles, run clockwise or not, so that one inside another leaves a ring. */
    private void circle(Point centre, double radius, boolean clockwise) {
        to('M', centre.plus(0, -radius));
        arc(radius, false, clockwise, centre.plus(0, radius));
        arc(radius, false, clockwise, centre.plus(0, -radius));
        text.append('Z');
    }

    private void arc(double radius, boolean large, boolean clockwise, Point end) {
        String length = Numbers.of(radius);
        text.append('A').append(length).append(' ').append(length).append(" 0 ");
        text.append(large ? '1' : '0').append(' ').append(clockwise ? '1' : '0').append(' ');
        text.append(Numbers.of(end.x())).append(' ').append(Numbers.of(end.y()));
    }
}
