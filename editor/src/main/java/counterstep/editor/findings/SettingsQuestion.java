package counterstep.editor.findings;

import counterstep.check.Check;
import counterstep.edit.SetCheckSettings;
import counterstep.editor.form.Form;
import counterstep.editor.form.Question;
import counterstep.model.CheckSetting;
import counterstep.model.Procedure;
import counterstep.review.AllChecks;
import counterstep.review.CheckGroup;
import java.awt.BorderLayout;
import java.awt.Component;
import java.awt.Dimension;
import java.awt.Point;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import javax.swing.BorderFactory;
import javax.swing.JLabel;
import javax.swing.JPanel;
import javax.swing.JScrollPane;
import javax.swing.ScrollPaneConstants;
import javax.swing.SwingUtilities;

/** Asks how a document wants its checks taken. */
final class SettingsQuestion {
    private static final Dimension SIZE = new Dimension(680, 480);

    private final Procedure procedure;
    private final List<SettingRow> rows = new ArrayList<>();
    private final JLabel owed = new JLabel(" ");
    private final JScrollPane scroll;
    private final Question question;

    SettingsQuestion(Component owner, Procedure procedure) {
        this.procedure = procedure;
        JPanel page = new JPanel(new BorderLayout(0, 8));
        question = new Question(owner, "Check settings", page, "Set");
        Form form = new Form();
        for (CheckGroup group : AllChecks.groups()) {
            form.heading(group.name());
            for (Check check : group.checks()) {
                SettingRow row =
                        new SettingRow(check.about(), kept(check.about().id()), this::judge);
                rows.add(row);
                form.wide(row.component());
            }
        }
        form.end();
        form.setBorder(BorderFactory.createEmptyBorder(0, 0, 0, 16));
        scroll = new JScrollPane(form);
        scroll.setBorder(BorderFactory.createEmptyBorder());
        scroll.setHorizontalScrollBarPolicy(ScrollPaneConstants.HORIZONTAL_SCROLLBAR_NEVER);
        scroll.getVerticalScrollBar().setUnitIncrement(16);
        scroll.setPreferredSize(SIZE);
        owed.setName("reason owed");
        owed.putClientProperty("FlatLaf.styleClass", "error");
        page.add(scroll, BorderLayout.CENTER);
        page.add(owed, BorderLayout.SOUTH);
        judge();
    }

    private Optional<CheckSetting> kept(String check) {
        return procedure.settings().stream().filter(one -> one.check().equals(check)).findFirst();
    }

    private void judge() {
        Optional<SettingRow> owes = rows.stream().filter(SettingRow::owesReason).findFirst();
        owed.setText(
                owes.map(row -> "Give a reason why '" + row.name() + "' counts for less here.")
                        .orElse(" "));
        question.ready(owes.isEmpty());
    }

    /** The change, or empty if it was cancelled. Settings of checks not known here are kept. */
    Optional<SetCheckSettings> ask() {
        SwingUtilities.invokeLater(() -> scroll.getViewport().setViewPosition(new Point()));
        if (!question.ask()) {
            return Optional.empty();
        }
        Stream<CheckSetting> unknown =
                procedure.settings().stream()
                        .filter(
                                setting ->
                                        AllChecks.list().stream()
                                                .noneMatch(
                                                        check ->
                                                                check.about()
                                                                        .id()
                                                                        .equals(setting.check())));
        Stream<CheckSetting> known = rows.stream().flatMap(row -> row.setting().stream());
        return Optional.of(new SetCheckSettings(Stream.concat(known, unknown).toList()));
    }
}
