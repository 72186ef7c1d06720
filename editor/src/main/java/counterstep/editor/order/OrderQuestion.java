package counterstep.editor.order;

import counterstep.editor.form.Question;
import counterstep.editor.theme.Palette;
import counterstep.editor.theme.PlainText;
import counterstep.editor.theme.Type;
import counterstep.editor.theme.WrappedText;
import counterstep.links.Demand;
import counterstep.model.Index;
import counterstep.model.Procedure;
import counterstep.review.OrderProposal;
import java.awt.BorderLayout;
import java.awt.Component;
import java.awt.Dimension;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import javax.swing.BorderFactory;
import javax.swing.JLabel;
import javax.swing.JPanel;
import javax.swing.JScrollPane;
import javax.swing.ScrollPaneConstants;

/** Shows the order of fewest tool changes beside the page, and asks whether to take it. */
public final class OrderQuestion {
    private static final int MOST_HEIGHT = 560;
    private static final int BAR = 16;

    private OrderQuestion() {}

    /**
     * Asks; whether the order is wanted.
     *
     * @param before the document that the order was made for
     */
    public static boolean accepts(
            Component owner, String title, OrderProposal proposal, Procedure before) {
        TwoOrders orders = TwoOrders.of(before, proposal.edit().apply(before));
        OrdersView view = new OrdersView(orders);
        JScrollPane scroll = new JScrollPane(view);
        scroll.setBorder(BorderFactory.createEmptyBorder());
        scroll.setHorizontalScrollBarPolicy(ScrollPaneConstants.HORIZONTAL_SCROLLBAR_NEVER);
        scroll.getVerticalScrollBar().setUnitIncrement(OrderColumn.ROW);
        scroll.setColumnHeaderView(heads(proposal));
        scroll.setPreferredSize(
                new Dimension(
                        OrdersView.WIDTH + BAR,
                        Math.min(MOST_HEIGHT, view.getPreferredSize().height + 32)));
        JPanel content = new JPanel(new BorderLayout(0, 12));
        content.add(words(proposal, orders, Index.of(before)), BorderLayout.NORTH);
        content.add(scroll, BorderLayout.CENTER);
        return new Question(owner, title, content, "Apply").orElse("Leave").nothingToFillIn().ask();
    }

    private static JPanel heads(OrderProposal proposal) {
        JPanel heads = new JPanel(null);
        heads.setPreferredSize(new Dimension(OrdersView.WIDTH, 28));
        heads.setBackground(Palette.PANEL.color());
        heads.add(head("Page order, " + proposal.now() + " tool changes", 0));
        heads.add(
                head(
                        "Best order, %d tool changes".formatted(proposal.fewest().count()),
                        OrdersView.otherLeft()));
        return heads;
    }

    private static JLabel head(String words, int left) {
        JLabel head = PlainText.in(new JLabel(words));
        head.putClientProperty("FlatLaf.styleClass", "strong");
        head.setBounds(left, 0, OrderColumn.WIDTH, 24);
        return head;
    }

    private static JPanel words(OrderProposal proposal, TwoOrders orders, Index index) {
        JLabel head = PlainText.in(new JLabel(head(proposal)));
        head.setName("figures");
        head.putClientProperty("FlatLaf.styleClass", "panelHead");
        WrappedText said = new WrappedText(Palette.SOFT, Type.BODY);
        said.setName("what will change");
        said.setText(said(proposal, orders, index));
        said.setPreferredSize(new Dimension(OrdersView.WIDTH, said.heightAt(OrdersView.WIDTH)));
        JPanel words = new JPanel(new BorderLayout(0, 4));
        words.add(head, BorderLayout.NORTH);
        words.add(said, BorderLayout.CENTER);
        return words;
    }

    /** The figures alone. */
    static String head(OrderProposal proposal) {
        int fewest = proposal.fewest().count();
        return proposal.fewest().proved()
                ? "Fewest possible: %d, now %d".formatted(fewest, proposal.now())
                : "Fewest found: %d, now %d; at least %d"
                        .formatted(fewest, proposal.now(), proposal.fewest().atLeast());
    }

    private static String said(OrderProposal proposal, TwoOrders orders, Index index) {
        List<String> parts = new ArrayList<>();
        parts.add(
                proposal.fewest().proved()
                        ? "Proved: no order that the links allow has fewer. Of those with as few"
                                + " this one follows the page longest."
                        : "It is not proved that no order has fewer.");
        int moved = orders.moved().size();
        parts.add(moved == 1 ? "1 step is moved." : moved + " steps are moved.");
        parts.add("All checks find no more in it than on the page.");
        told("It keeps: ", proposal.fewest().demands().all(), index, parts);
        told("The page does not keep: ", proposal.pageBreaks(), index, parts);
        return String.join(" ", parts);
    }

    private static void told(String begin, List<Demand> demands, Index index, List<String> parts) {
        if (!demands.isEmpty()) {
            parts.add(
                    demands.stream()
                            .map(demand -> demand.told(index))
                            .collect(Collectors.joining("; ", begin, ".")));
        }
    }
}
