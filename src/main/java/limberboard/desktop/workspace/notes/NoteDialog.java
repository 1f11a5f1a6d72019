package limberboard.desktop.workspace.notes;

import java.awt.BorderLayout;
import java.awt.Component;
import java.awt.Dialog;
import java.awt.Dimension;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import javax.swing.BorderFactory;
import javax.swing.JButton;
import javax.swing.JCheckBox;
import javax.swing.JComponent;
import javax.swing.JDialog;
import javax.swing.JFileChooser;
import javax.swing.JPanel;
import javax.swing.JScrollPane;
import javax.swing.JTextArea;
import javax.swing.SwingUtilities;
import javax.swing.filechooser.FileNameExtensionFilter;
import limberboard.desktop.base.Session;
import limberboard.desktop.parts.Buttons;
import limberboard.desktop.parts.Column;
import limberboard.desktop.parts.Keys;
import limberboard.desktop.parts.Later;
import limberboard.desktop.parts.Row;
import limberboard.desktop.parts.Text;
import limberboard.desktop.parts.When;
import limberboard.desktop.parts.Wrapped;
import limberboard.library.page.Page;

/** Catches a note: its text, what it is about, and a photo. */
public final class NoteDialog {
  private final NotesModel model;
  private final JDialog dialog;
  private final JTextArea text = new JTextArea(7, 42);
  private final NoteTies ties;
  private final JCheckBox page = new JCheckBox();
  private final JCheckBox boat = new JCheckBox();
  private final Wrapped photoName = Text.quiet("");
  private Optional<Path> photo = Optional.empty();

  private NoteDialog(Component above, NotesModel model, Session session) {
    this.model = model;
    this.ties = model.screen();
    dialog =
        new JDialog(
            SwingUtilities.getWindowAncestor(above),
            "A quick note",
            Dialog.ModalityType.APPLICATION_MODAL);
    dialog.setContentPane(content(session));
    Keys.within(dialog.getRootPane(), "ESCAPE", this::leave);
    Keys.within(dialog.getRootPane(), "control ENTER", this::save);
    When.showing(text, () -> Later.focus(text));
    dialog.pack();
    Dimension size = dialog.getSize();
    dialog.setSize(size.width, dialog.getPreferredSize().height + 8);
    dialog.setLocationRelativeTo(SwingUtilities.getWindowAncestor(above));
  }

  /**
   * Asks for a note, and keeps it when it is saved.
   *
   * @param above what it stands above
   */
  public static void ask(Component above, NotesModel model, Session session) {
    NoteDialog asking = new NoteDialog(above, model, session);
    asking.dialog.setVisible(true);
    if (asking.dialog.getOwner() != null) {
      asking.dialog.getOwner().requestFocus();
    }
  }

  private JComponent content(Session session) {
    text.setName("note-text");
    text.setLineWrap(true);
    text.setWrapStyleWord(true);
    text.setText(model.draft());
    text.getAccessibleContext().setAccessibleName("What is to be noted");
    text.setFocusTraversalKeys(java.awt.KeyboardFocusManager.FORWARD_TRAVERSAL_KEYS, null);
    Column about = new Column(6);
    for (JCheckBox each : boxes(session)) {
      about.add(each);
    }
    JButton choose = Buttons.plain("Add a photo …", "note-photo", this::choosePhoto);
    about.add(Row.wrapping(8, choose));
    about.add(photoName);
    photoName.setVisible(false);
    about.add(
        Row.wrapping(
            8,
            Buttons.main("Note it (Ctrl+Enter)", "note-save", this::save),
            Buttons.plain("Not now", "note-leave", this::leave)));
    JPanel panel = new JPanel(new BorderLayout(0, 10));
    panel.setBorder(BorderFactory.createEmptyBorder(14, 18, 14, 18));
    panel.add(
        Text.quiet("Kept at once in this workspace, and waiting there until it is worked in."),
        BorderLayout.NORTH);
    panel.add(new JScrollPane(text), BorderLayout.CENTER);
    panel.add(about, BorderLayout.SOUTH);
    return panel;
  }

  private List<JCheckBox> boxes(Session session) {
    List<JCheckBox> boxes = new ArrayList<>();
    ties.page()
        .ifPresent(
            id -> {
              String title = session.library().page(id).map(Page::title).orElse(id);
              page.setText("About the page “" + title + "”");
              page.setName("note-page");
              page.setSelected(true);
              boxes.add(page);
            });
    ties.boat()
        .ifPresent(
            id -> {
              boat.setText("About " + session.boat().map(each -> each.name()).orElse(id));
              boat.setName("note-boat");
              boat.setSelected(true);
              boxes.add(boat);
            });
    return boxes;
  }

  private void choosePhoto() {
    JFileChooser chooser = new JFileChooser();
    chooser.setDialogTitle("A photo for the note");
    chooser.setFileFilter(new FileNameExtensionFilter("Photos (.jpg, .png)", "jpg", "jpeg", "png"));
    if (chooser.showOpenDialog(dialog) == JFileChooser.APPROVE_OPTION) {
      photo = Optional.of(chooser.getSelectedFile().toPath());
      photoName.setText("With a copy of " + chooser.getSelectedFile().getName() + ".");
      photoName.setVisible(true);
      dialog.pack();
    }
  }

  private void save() {
    if (text.getText().isBlank() && photo.isEmpty()) {
      text.requestFocusInWindow();
      return;
    }
    NoteTies kept =
        new NoteTies(
            ties.page().filter(id -> page.isSelected()),
            ties.boat().filter(id -> boat.isSelected()));
    dialog.dispose();
    model.add(text.getText(), kept, photo);
  }

  /** What was typed stands there again next time. */
  private void leave() {
    model.draft(text.getText());
    dialog.dispose();
  }
}
