package counterstep.editor.blocks;

import counterstep.editor.clipboard.CarriedSteps;
import counterstep.editor.desk.Desk;
import counterstep.editor.desk.DeskPanel;
import counterstep.editor.desk.WhileShown;
import counterstep.editor.form.KeyPress;
import counterstep.editor.theme.Palette;
import counterstep.editor.theme.Type;
import counterstep.editor.theme.WideList;
import counterstep.editor.theme.WrappedText;
import counterstep.excerpt.Block;
import counterstep.excerpt.PutIn;
import counterstep.input.BadInput;
import counterstep.model.StepId;
import counterstep.store.BlockFolder;
import java.awt.FlowLayout;
import java.awt.GridLayout;
import java.awt.datatransfer.Transferable;
import java.awt.event.MouseAdapter;
import java.awt.event.MouseEvent;
import java.util.List;
import java.util.Optional;
import javax.swing.BorderFactory;
import javax.swing.DefaultListModel;
import javax.swing.JButton;
import javax.swing.JComponent;
import javax.swing.JList;
import javax.swing.JPanel;
import javax.swing.JScrollPane;
import javax.swing.ListSelectionModel;
import javax.swing.TransferHandler;

/** Blocks that are put into the document, and kept from it. */
public final class BlocksPanel implements DeskPanel {
    private final Desk desk;
    private final JPanel panel = new JPanel(new GridLayout(1, 2));
    private final DefaultListModel<BlockRow> rows = new DefaultListModel<>();
    private final JList<BlockRow> list = new WideList<>(rows);
    private final WrappedText description = new WrappedText(Palette.INK, Type.BODY);
    private final JButton putIn = button("Put in", this::putIn);
    private final JButton drop = button("Throw away", this::drop);
    private final WhileShown whileShown = new WhileShown(panel, this::render);
    private Optional<BlockFolder> folder = Optional.empty();

    /** Blocks for what lies on a desk. */
    public BlocksPanel(Desk desk) {
        this.desk = desk;
        list.setName("blocks");
        list.getAccessibleContext().setAccessibleName("Blocks");
        list.setCellRenderer(new BlockRowRenderer());
        list.setFixedCellHeight(26);
        list.setSelectionMode(ListSelectionModel.SINGLE_SELECTION);
        list.addListSelectionListener(event -> describe());
        list.setDragEnabled(true);
        list.setTransferHandler(new Carried());
        KeyPress.on(list, "ENTER", this::putIn);
        KeyPress.on(list, "DELETE", this::drop);
        list.addMouseListener(
                new MouseAdapter() {
                    @Override
                    public void mouseClicked(MouseEvent event) {
                        if (event.getClickCount() == 2) {
                            putIn();
                        }
                    }
                });
        description.setName("block description");
        description.setBorder(BorderFactory.createEmptyBorder(8, 16, 8, 16));
        panel.add(new JScrollPane(list));
        panel.add(new JScrollPane(description));
        describe();
    }

    private static JButton button(String words, Runnable act) {
        JButton button = new JButton(words);
        button.setName(words);
        button.putClientProperty("FlatLaf.styleClass", "word");
        button.addActionListener(event -> act.run());
        return button;
    }

    /** Says where the writer's own blocks are kept. */
    public void keepIn(BlockFolder own) {
        folder = Optional.of(own);
        whileShown.changed();
    }

    @Override
    public String title() {
        return "Blocks";
    }

    @Override
    public JComponent component() {
        return panel;
    }

    @Override
    public Optional<JComponent> tabControls() {
        JPanel end = new JPanel(new FlowLayout(FlowLayout.TRAILING, 4, 2));
        end.setOpaque(false);
        end.add(putIn);
        end.add(button("Keep…", this::keep));
        end.add(drop);
        return Optional.of(end);
    }

    /** Asks what of the document goes into a block, and keeps it. */
    public void keep() {
        if (folder.isPresent()) {
            BlockFolder own = folder.get();
            new KeepQuestion(panel, desk.state(), own::has)
                    .ask()
                    .ifPresent(block -> changing(() -> own.keep(block)));
        }
    }

    private void putIn() {
        chosen().map(BlockRow::block)
                .ifPresent(
                        block -> {
                            Optional<StepId> below =
                                    desk.state().selection().steps().stream()
                                            .reduce((one, other) -> other);
                            desk.applyAndSelectNew(PutIn.block(block, below));
                        });
    }

    private void drop() {
        chosen().filter(BlockRow::own)
                .ifPresent(row -> folder.ifPresent(own -> changing(() -> own.drop(row.block()))));
    }

    private void changing(Runnable act) {
        try {
            act.run();
            render();
        } catch (BadInput refused) {
            description.setText(refused.getMessage() + ". The blocks are as they were.");
        }
    }

    private Optional<BlockRow> chosen() {
        return Optional.ofNullable(list.getSelectedValue());
    }

    private void render() {
        String before = chosen().map(BlockRow::title).orElse("");
        rows.clear();
        List<String> unreadable = List.of();
        if (folder.isPresent()) {
            BlockFolder.Content content = folder.get().read();
            content.blocks().forEach(block -> rows.addElement(new BlockRow(block, true)));
            unreadable = content.unreadable();
        }
        Supplied.blocks().forEach(block -> rows.addElement(new BlockRow(block, false)));
        for (int at = 0; at < rows.size(); at++) {
            if (rows.get(at).title().equals(before)) {
                list.setSelectedIndex(at);
            }
        }
        describe();
        if (!unreadable.isEmpty()) {
            description.setText(String.join("\n", unreadable));
        }
    }

    private void describe() {
        putIn.setEnabled(chosen().isPresent());
        drop.setEnabled(chosen().filter(BlockRow::own).isPresent());
        description.role(chosen().isPresent() ? Palette.INK : Palette.SOFT);
        description.setText(
                chosen().map(BlockRow::block)
                        .map(Block::described)
                        .orElse(
                                "A block holds steps, tools or cautions that you use again. Put in"
                                        + " lays it below the selected step, a drag below the step it"
                                        + " is dropped on; what the document has already is used."
                                        + " Keep… makes one of the selected steps, of the tool list or"
                                        + " of the cautions."));
        description.setCaretPosition(0);
    }

    /** Lets a block be dragged onto the step graph, and copied as steps are. */
    private final class Carried extends TransferHandler {
        @Override
        public int getSourceActions(JComponent source) {
            return COPY;
        }

        @Override
        protected Transferable createTransferable(JComponent source) {
            return chosen().map(row -> CarriedSteps.of(row.block())).orElse(null); // none, in Swing
        }
    }
}
