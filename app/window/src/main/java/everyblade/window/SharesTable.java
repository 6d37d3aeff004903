package everyblade.window;

import everyblade.core.sight.Hindrance;
import everyblade.picture.MapWords;
import everyblade.picture.scene.Ink;
import everyblade.picture.scene.Theme;
import everyblade.window.author.SightShares;
import everyblade.words.Words;
import java.awt.Component;
import java.awt.Graphics;
import java.util.List;
import java.util.Locale;
import javax.swing.JComponent;
import javax.swing.JScrollPane;
import javax.swing.JTable;
import javax.swing.table.AbstractTableModel;
import javax.swing.table.DefaultTableCellRenderer;

/** What a station shows of each zone: shares as bars with their numbers, and what hides the rest. */
final class SharesTable {

    private static final int NAME = 0;
    private static final int EVERY = 1;
    private static final int NONE = 3;
    private static final int WHY = 4;
    private static final int WORDY = 150;
    private static final int NARROW = 105;

    private final Words words;
    private final Lines lines = new Lines();
    private final JTable table;
    private final JScrollPane scroll;

    SharesTable(Words words, Theme theme) {
        this.words = words;
        table = new JTable(lines);
        scroll = new JScrollPane(table);
        table.setName("author shares");
        Texts.name(table, words.say("author.page.shares"));
        table.setDefaultRenderer(Double.class, new Bars(theme));
        table.setRowHeight(table.getRowHeight() + 6);
        table.getTableHeader().setReorderingAllowed(false);
        for (int column = 0; column <= WHY; column++) {
            table.getColumnModel()
                    .getColumn(column)
                    .setPreferredWidth(column == NAME || column == WHY ? WORDY : NARROW);
        }
        ModelText.leaveKeysToTheWindow(scroll);
    }

    JComponent component() {
        return scroll;
    }

    JComponent focused() {
        return table;
    }

    void show(List<SightShares.Zone> zones) {
        lines.zones = zones;
        lines.fireTableDataChanged();
    }

    private final class Lines extends AbstractTableModel {

        private static final long serialVersionUID = 1;
        private static final List<String> HEADS = List.of(
                "author.shares.zone",
                "author.shares.every",
                "author.shares.mean",
                "author.shares.none",
                "author.shares.why");

        private transient List<SightShares.Zone> zones = List.of();

        @Override
        public int getRowCount() {
            return zones.size();
        }

        @Override
        public int getColumnCount() {
            return HEADS.size();
        }

        @Override
        public String getColumnName(int column) {
            return words.say(HEADS.get(column));
        }

        @Override
        public Class<?> getColumnClass(int column) {
            return column >= EVERY && column <= NONE ? Double.class : String.class;
        }

        @Override
        public Object getValueAt(int line, int column) {
            SightShares.Zone zone = zones.get(line);
            return switch (column) {
                case NAME -> MapWords.of(words).zone(zone.name());
                case EVERY -> zone.every();
                case NONE -> zone.none();
                case WHY -> zone.why().map(this::told).orElse("");
                default -> zone.mean();
            };
        }

        private String told(Hindrance why) {
            return words.say("author.why." + why.name().toLowerCase(Locale.ROOT));
        }
    }

    /** A share as a bar from the left, its number over it. */
    private final class Bars extends DefaultTableCellRenderer {

        private static final long serialVersionUID = 1;

        private final Theme theme;
        private double share;
        private Ink ink = Ink.STEP_1;

        Bars(Theme theme) {
            this.theme = theme;
        }

        @Override
        public Component getTableCellRendererComponent(
                JTable of, Object value, boolean isSelected, boolean focus, int line, int column) {
            share = (Double) value;
            ink = column == NONE ? Ink.MAYBE_WASH : Ink.STEP_2;
            String told = column == NONE ? words.badPercent(share) : words.percent(share);
            super.getTableCellRendererComponent(of, told, isSelected, focus, line, column);
            setOpaque(false);
            setHorizontalAlignment(RIGHT);
            setForeground(Looks.colour(theme, Ink.LINE));
            return this;
        }

        @Override
        protected void paintComponent(Graphics g) {
            g.setColor(Looks.colour(theme, ink));
            g.fillRect(0, 2, (int) Math.round(share * getWidth()), getHeight() - 4);
            super.paintComponent(g);
        }
    }
}
