package limberboard.desktop.workspace;

import java.awt.BorderLayout;
import java.awt.CardLayout;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import javax.swing.BorderFactory;
import javax.swing.Icon;
import javax.swing.JComponent;
import javax.swing.JPanel;
import limberboard.desktop.base.Place;
import limberboard.desktop.base.View;
import limberboard.desktop.look.LineIcon;
import limberboard.desktop.parts.AspectButtons;
import limberboard.desktop.parts.Later;
import limberboard.desktop.parts.Sides;
import limberboard.desktop.read.PlaceTools;
import limberboard.desktop.workspace.findings.FindingsModel;
import limberboard.desktop.workspace.findings.FindingsOutside;
import limberboard.desktop.workspace.findings.FindingsView;
import limberboard.desktop.workspace.history.HistoryModel;
import limberboard.desktop.workspace.history.HistoryOutside;
import limberboard.desktop.workspace.history.PageHistoryView;
import limberboard.desktop.workspace.history.WhoDialog;
import limberboard.desktop.workspace.notes.NoteDialog;
import limberboard.desktop.workspace.notes.NotesModel;
import limberboard.desktop.workspace.notes.NotesOutside;
import limberboard.desktop.workspace.notes.NotesView;
import limberboard.desktop.workspace.share.AddressDialog;
import limberboard.desktop.workspace.share.PasswordDialog;
import limberboard.desktop.workspace.share.ShareOutside;
import limberboard.desktop.workspace.share.SharingModel;
import limberboard.desktop.workspace.share.SharingView;
import limberboard.sharing.Connection;

/** The place for the workspace as a whole: findings, quick notes, history and sharing. */
public final class WorkspacePlace implements Place {
  private static final int ICON = 26;
  private final HistoryModel history;
  private final PageHistoryView historyView;
  private final SharingModel sharing;
  private final SharingView sharingView;
  private final FindingsModel findings;
  private final FindingsView findingsView;
  private final NotesModel notes;
  private final NotesView notesView;
  private final PlaceTools tools;
  private final AspectButtons aspects;
  private final CardLayout cards = new CardLayout();
  private final JPanel view = new JPanel(cards);
  private final JPanel panel = new JPanel(new BorderLayout(0, 10));
  private View now;
  private Runnable changed = () -> {};

  /** What the place touches outside the window. */
  public record Outside(HistoryOutside history, FindingsOutside findings, NotesOutside notes) {}

  /** The place. */
  public WorkspacePlace(PlaceTools tools, Outside around) {
    this.tools = tools;
    HistoryOutside outside = around.history();
    history = new HistoryModel(outside);
    historyView = new PageHistoryView(history, tools);
    outside.who().askedBy(new WhoDialog(panel));
    sharing =
        new SharingModel(
            new ShareOutside(
                outside,
                Connection::ofMachine,
                new PasswordDialog(panel),
                new AddressDialog(panel)));
    sharingView = new SharingView(sharing, tools, history::begin);
    history.onBegun(sharing::look);
    findings = new FindingsModel(around.findings());
    findingsView = new FindingsView(findings, tools, around.findings());
    notes = new NotesModel(around.notes());
    notesView = new NotesView(notes, tools, this::quickNote);
    notes.onShow(() -> tools.navigator().workspace(notesView.id()));
    now = findingsView;
    aspects = new AspectButtons("workspace", all(), this::look);
    build();
    history.onChange(() -> changed.run());
  }

  private List<View> all() {
    return List.of(findingsView, notesView, historyView, sharingView);
  }

  private void build() {
    view.setOpaque(false);
    all().forEach(each -> view.add(each.component(), each.id()));
    panel.setBorder(BorderFactory.createEmptyBorder(12, 18, 12, 18));
    panel.add(aspects, BorderLayout.NORTH);
    panel.add(view, BorderLayout.CENTER);
    aspects.mark(now);
  }

  /** Shows the history of a page. */
  public void history(String page) {
    history.open(page);
    look(historyView);
    historyView.attend();
  }

  /** The history that is shown. */
  public HistoryModel history() {
    return history;
  }

  /** Asks for a quick note, about what is on the screen. */
  public void quickNote() {
    NoteDialog.ask(panel, notes, tools.session());
  }

  /** Asks what kind of reader has read a page in full today, and notes that. */
  public void readInFull(String page) {
    findingsView.readInFull(page);
  }

  /** All findings. */
  public FindingsModel findings() {
    return findings;
  }

  /** The quick notes. */
  public NotesModel notes() {
    return notes;
  }

  /** Sharing with another copy. */
  public SharingModel sharing() {
    return sharing;
  }

  /** Shows a part of the place by its name; without effect when there is none of this name. */
  public void look(String id) {
    all().stream().filter(each -> each.id().equals(id)).findFirst().ifPresent(this::look);
  }

  private void look(View part) {
    now = part;
    if (part == sharingView) {
      sharing.look();
    } else if (part == findingsView) {
      findings.look();
    } else if (part == notesView) {
      notes.look();
    } else if (part == historyView) {
      history.lookAgain();
    }
    cards.show(view, part.id());
    aspects.mark(part);
    changed.run();
    if (panel.isShowing()) {
      Later.run(() -> Sides.goTo(part.regions().get(0)));
    }
  }

  @Override
  public Name name() {
    return new Name("workspace", "Workspace", '\0');
  }

  @Override
  public Icon icon() {
    return LineIcon.workspace(ICON);
  }

  @Override
  public JComponent component() {
    return panel;
  }

  @Override
  public Optional<String> subject() {
    return now == historyView
        ? history.page().map(id -> "History: " + historyTitle(id))
        : Optional.of(now.name().title());
  }

  private String historyTitle(String id) {
    return history.sheet().map(sheet -> sheet.title()).orElse(id);
  }

  @Override
  public void onSubject(Runnable listener) {
    changed = listener;
  }

  @Override
  public List<JComponent> regions() {
    List<JComponent> regions = new ArrayList<>(now.regions());
    regions.add(aspects);
    return regions;
  }
}
