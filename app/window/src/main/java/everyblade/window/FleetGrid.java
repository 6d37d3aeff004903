package everyblade.window;

import everyblade.picture.scene.Ink;
import everyblade.picture.scene.Theme;
import everyblade.window.view.FleetBoard;
import everyblade.words.Visible;
import everyblade.words.Words;
import java.awt.Component;
import java.awt.Graphics;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import javax.swing.JComponent;
import javax.swing.JScrollPane;
import javax.swing.JTable;
import javax.swing.ListSelectionModel;
import javax.swing.table.AbstractTableModel;
import javax.swing.table.DefaultTableCellRenderer;

/** Engines as lines, their rows as columns: what is left of each row as a bar with its number, and how long ago that was. */
final class FleetGrid {

    /** Columns before those of the rows. */
    private static final List<String> HEADS = List.of("fleet.page.engine", "fleet.page.site", "fleet.page.age");

    private static final int WIDE = 200;
    private static final int NARROW = 80;

    private final Words words;
    private final Lines lines = new Lines();
    private final JTable table;
    private final JScrollPane scroll;

    /** @param chosen is told which engine is chosen */
    FleetGrid(Words words, Theme theme, Consumer<Optional<FleetBoard.Engine>> chosen) {
        this.words = words;
        this.table = new JTable(lines);
        this.scroll = new JScrollPane(table);
        table.setName("fleet.grid");
        Texts.name(table, words.say("fleet.page.title"));
        table.setDefaultRenderer(FleetBoard.Cell.class, new Bars(theme));
        table.setRowHeight(Looks.scaled(30));
        table.setSelectionMode(ListSelectionModel.SINGLE_SELECTION);
        table.setAutoResizeMode(JTable.AUTO_RESIZE_OFF);
        table.getTableHeader().setReorderingAllowed(false);
        table.getSelectionModel().addListSelectionListener(moved -> chosen.accept(chosen()));
        ModelText.leaveKeysToTheWindow(scroll);
    }

    JComponent component() {
        return scroll;
    }

    void show(FleetBoard board) {
        lines.board = board;
        lines.fireTableStructureChanged();
        for (int column = 0; column < lines.getColumnCount(); column++) {
            table.getColumnModel().getColumn(column).setPreferredWidth(Looks.scaled(column == 0 ? WIDE : NARROW));
        }
        if (!board.engines().isEmpty()) {
            table.setRowSelectionInterval(0, 0);
        }
    }

    Optional<FleetBoard.Engine> chosen() {
        int line = table.getSelectedRow();
        return line < 0 || line >= lines.getRowCount()
                ? Optional.empty()
                : Optional.of(lines.board.engines().get(line));
    }

    private final class Lines extends AbstractTableModel {

        private static final long serialVersionUID = 1;

        private transient FleetBoard board = new FleetBoard(List.of(), List.of(), List.of(), 0);

        @Override
        public int getRowCount() {
            return board.engines().size();
        }

        @Override
        public int getColumnCount() {
            return HEADS.size() + board.rows().size();
        }

        @Override
        public String getColumnName(int column) {
            return column < HEADS.size()
                    ? words.say(HEADS.get(column))
                    : Visible.text(board.rows().get(column - HEADS.size()));
        }

        @Override
        public Class<?> getColumnClass(int column) {
            return column < HEADS.size() ? String.class : FleetBoard.Cell.class;
        }

        @Override
        public Object getValueAt(int line, int column) {
            FleetBoard.Engine engine = board.engines().get(line);
            return switch (column) {
                case 0 -> Visible.text(engine.model() + " · " + engine.serial());
                case 1 -> engine.site();
                case 2 -> words.say("fleet.page.days", engine.days());
                default -> engine.cells().get(board.rows().get(column - HEADS.size()));
            };
        }
    }

    /** What is left of a row, as a bar from the left with its number; a row that the engine lacks is empty. */
    private final class Bars extends DefaultTableCellRenderer {

        private static final long serialVersionUID = 1;

        private final transient Theme theme;
        private double left;

        Bars(Theme theme) {
            this.theme = theme;
        }

        @Override
        public Component getTableCellRendererComponent(
                JTable of, Object value, boolean isSelected, boolean focus, int line, int column) {
            Optional<FleetBoard.Cell> cell = Optional.ofNullable((FleetBoard.Cell) value);
            left = cell.map(FleetBoard.Cell::shareLeft).orElse(0.0);
            String text = cell.map(
                            one -> words.say("fleet.page.cell", words.badPercent(one.shareLeft()), one.findings()))
                    .orElse("");
            super.getTableCellRendererComponent(of, text, isSelected, focus, line, column);
            setOpaque(false);
            setHorizontalAlignment(RIGHT);
            setForeground(Looks.colour(theme, Ink.LINE));
            return this;
        }

        @Override
        protected void paintComponent(Graphics g) {
            g.setColor(Looks.colour(theme, Ink.MAYBE_WASH));
            g.fillRect(0, 2, (int) Math.ceil(left * getWidth()), getHeight() - 4);
            super.paintComponent(g);
        }
    }
}
