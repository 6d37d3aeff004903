package everyblade.window.map;

import everyblade.words.Visible;
import java.util.List;
import java.util.stream.Collectors;

/** Lines of words as the text of a tool tip. */
final class ToolTip {

    /** Lines beyond these are left out in the middle: the last ones conclude. */
    private static final int MOST = 12;

    private static final int LAST = 4;

    /** Letters on a line. */
    private static final int WIDTH = 90;

    private ToolTip() {}

    static String of(List<String> lines) {
        List<String> shown = lines;
        if (lines.size() > MOST) {
            shown = new java.util.ArrayList<>(lines.subList(0, MOST - LAST - 1));
            shown.add("… + " + (lines.size() - MOST + 1) + " …");
            shown.addAll(lines.subList(lines.size() - LAST, lines.size()));
        }
        return shown.stream().map(ToolTip::broken).collect(Collectors.joining("\n"));
    }

    /** A line on as many lines as it takes to stay on the screen. */
    private static String broken(String line) {
        StringBuilder text = new StringBuilder();
        int length = 0;
        for (String word : Visible.text(line).split(" ")) {
            boolean fits = length + word.length() < WIDTH;
            text.append(length == 0 ? "" : fits ? " " : "\n   ").append(word);
            length = fits ? length + word.length() + 1 : word.length() + 1;
        }
        return text.toString();
    }
}
