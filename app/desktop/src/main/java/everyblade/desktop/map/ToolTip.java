package everyblade.desktop.map;

import java.util.List;
import java.util.stream.Collectors;

/** Lines of words as the text of a tool tip, the first one heavy. */
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
        String rest = shown.stream().skip(1).map(ToolTip::broken).collect(Collectors.joining("<br>"));
        return "<html><b>" + escaped(shown.get(0)) + "</b><br>" + rest + "</html>";
    }

    /** A line on as many lines as it takes to stay on the screen. */
    private static String broken(String line) {
        StringBuilder html = new StringBuilder();
        int length = 0;
        for (String word : line.split(" ")) {
            boolean fits = length + word.length() < WIDTH;
            html.append(length == 0 ? "" : fits ? " " : "<br>&nbsp;&nbsp;").append(escaped(word));
            length = fits ? length + word.length() + 1 : word.length() + 1;
        }
        return html.toString();
    }

    private static String escaped(String words) {
        return words.replace("&", "&amp;").replace("<", "&lt;").replace(">", "&gt;");
    }
}
