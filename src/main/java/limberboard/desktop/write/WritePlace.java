package limberboard.desktop.write;

import java.awt.BorderLayout;
import java.awt.CardLayout;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.WeakHashMap;
import javax.swing.BorderFactory;
import javax.swing.Icon;
import javax.swing.JComponent;
import javax.swing.JOptionPane;
import javax.swing.JPanel;
import limberboard.desktop.base.Latest;
import limberboard.desktop.base.Listeners;
import limberboard.desktop.base.Place;
import limberboard.desktop.look.LineIcon;
import limberboard.desktop.parts.Keys;
import limberboard.desktop.parts.Later;
import limberboard.desktop.parts.Sides;
import limberboard.desktop.parts.When;
import limberboard.desktop.read.PlaceTools;
import limberboard.desktop.write.state.HeaderChanges;
import limberboard.desktop.write.state.OpenPage;
import limberboard.desktop.write.state.WriteModel;
import limberboard.desktop.write.symptom.SymptomTools;
import limberboard.proofread.rule.PageRemark;

/** The place where pages are written. */
public final class WritePlace implements Place {
  private static final int ICON = 26;
  private static final int LEAST_WIDTH = 760;
  private final PlaceTools tools;
  private final WriteModel model;
  private final Latest completions;
  private final CardLayout cards = new CardLayout();
  private final JPanel shown = new JPanel(cards);
  private final JPanel texts = new JPanel(new BorderLayout());
  private final JPanel asked = new JPanel(new BorderLayout());
  private final JPanel panel = new JPanel(new BorderLayout(0, 10));
  private final Map<OpenPage, PageDesk> desks = new WeakHashMap<>();
  private final Listeners subjects = new Listeners();
  private final Beside beside;
  private final WriteTop top;
  private final WriteSheets sheets;
  private final Sides sides;
  private Optional<PageDesk> desk = Optional.empty();
  private Optional<Sheet> sheet = Optional.empty();

  /**
   * The place.
   *
   * @param tools what places are made with
   * @param model what is shown
   * @param symptoms what a symptom's table is made with
   */
  public WritePlace(PlaceTools tools, WriteModel model, SymptomTools symptoms) {
    this.tools = tools;
    this.model = model;
    completions = new Latest(tools.background());
    beside =
        new Beside(
            new Preview(tools), new HeaderForms(new HeaderChanges(model, tools.background())));
    sheets = new WriteSheets(model, tools, symptoms, this::away);
    top = new WriteTop(deeds());
    sides =
        new Sides(
            LEAST_WIDTH,
            "Text",
            texts,
            "Page and header",
            beside.component(),
            "write-beside",
            0.52,
            tools.dividers());
    build();
    keys();
    model.onChange(this::refresh);
    model.keeping().onChange(sheets::refresh);
    model.saving().onClash(this::clash);
    model.saving().onRecording(() -> ask(sheets.record()));
    When.showing(panel, model.keeping()::look);
    refresh();
  }

  private void build() {
    texts.setOpaque(false);
    asked.setOpaque(false);
    shown.setOpaque(false);
    shown.add(sides, "desk");
    shown.add(asked, "sheet");
    panel.setBorder(BorderFactory.createEmptyBorder(10, 16, 10, 16));
    panel.add(top, BorderLayout.NORTH);
    panel.add(shown, BorderLayout.CENTER);
  }

  private WriteTop.Deeds deeds() {
    return new WriteDeeds(model, tools.navigator(), sheets, this::ask);
  }

  private void keys() {
    WriteTop.Deeds deeds = deeds();
    Keys.within(panel, "control S", deeds::save);
    Keys.within(panel, "control G", deeds::choose);
    Keys.within(panel, "control shift N", deeds::begin);
    Keys.within(panel, "control K", deeds::link);
    Keys.within(panel, "control shift P", deeds::picture);
    Keys.within(panel, "control T", deeds::table);
    Keys.within(panel, "F2", deeds::rename);
    Keys.within(panel, "F4", deeds::read);
    Keys.within(panel, "F7", this::clash);
    Keys.within(panel, "F8", () -> desk.ifPresent(PageDesk::nextProblem));
  }

  /** Another page is shown, or something about one has changed. */
  private void refresh() {
    Optional<PageDesk> wanted = model.current().map(this::deskOf);
    if (!wanted.equals(desk)) {
      desk = wanted;
      texts.removeAll();
      desk.ifPresent(now -> texts.add(now, BorderLayout.CENTER));
      texts.revalidate();
      texts.repaint();
      away();
    }
    if (desk.isEmpty() && sheet.isEmpty()) {
      ask(sheets.pages());
    }
    sheets.refresh();
    follow();
  }

  private PageDesk deskOf(OpenPage page) {
    return desks.computeIfAbsent(
        page,
        each -> {
          each.onChange(this::follow);
          return new PageDesk(each, model, completions, tools.dividers(), this::answer);
        });
  }

  private void follow() {
    Optional<OpenPage> page = model.current();
    top.show(
        page, model.unsaved().stream().filter(each -> !page.equals(Optional.of(each))).count());
    page.ifPresent(beside::show);
    page.ifPresent(sheets.symptom()::follow);
    subjects.tell();
  }

  /** Asks why a finding is right as it stands. */
  private void answer(PageRemark finding) {
    ask(sheets.answer().about(finding));
  }

  /** Asks something in the place of the text. */
  private void ask(Sheet other) {
    if (other instanceof SymptomSheet && sheet.equals(Optional.of(other))) {
      away();
      return;
    }
    sheet = Optional.of(other);
    asked.removeAll();
    asked.add(other, BorderLayout.CENTER);
    other.ready();
    cards.show(shown, "sheet");
    asked.revalidate();
    asked.repaint();
    if (panel.isShowing()) {
      Later.focus(other.begin());
    }
  }

  /** Goes back to the text. */
  private void away() {
    if (desk.isEmpty()) {
      if (!sheet.equals(Optional.of(sheets.pages()))) {
        ask(sheets.pages());
      }
      return;
    }
    sheet = Optional.empty();
    cards.show(shown, "desk");
    if (panel.isShowing()) {
      Later.run(() -> desk.ifPresent(now -> Sides.goTo(now.text())));
    }
  }

  /** Both versions are shown, or the text again when they are the same. */
  private void clash() {
    if (model.current().flatMap(OpenPage::clash).isPresent()) {
      ask(sheets.both());
    } else if (sheet.equals(Optional.of(sheets.both()))) {
      away();
    }
  }

  /** What is written. */
  public WriteModel model() {
    return model;
  }

  /** Shows the symptom that is written as a table; without effect for another page. */
  public void table(boolean trying) {
    if (!sheet.equals(Optional.of(sheets.symptom()))) {
      deeds().table();
    }
    sheets.symptom().look(trying);
  }

  /** Shows what stands beside the text, by its name. */
  public void look(String id) {
    beside.look(id);
  }

  @Override
  public Name name() {
    return new Name("write", "Write", '\0');
  }

  @Override
  public Icon icon() {
    return LineIcon.write(ICON);
  }

  @Override
  public JComponent component() {
    return panel;
  }

  @Override
  public JComponent begin() {
    return regions().get(0);
  }

  @Override
  public List<JComponent> regions() {
    List<JComponent> regions = new ArrayList<>();
    if (sheet.isPresent()) {
      regions.addAll(sheet.get().regions());
    } else {
      desk.ifPresent(now -> regions.addAll(now.regions()));
      regions.addAll(beside.regions());
    }
    regions.add(top.region());
    return regions;
  }

  @Override
  public Optional<Find> find() {
    return sheet.isPresent() ? Optional.empty() : beside.find();
  }

  @Override
  public Optional<String> subject() {
    return model.current().map(page -> (page.isChanged() ? "* " : "") + page.title());
  }

  @Override
  public void onSubject(Runnable listener) {
    subjects.add(listener);
  }

  @Override
  public boolean mayClose(Runnable then) {
    List<OpenPage> unsaved = model.unsaved();
    if (unsaved.isEmpty()) {
      return true;
    }
    Object[] answers = {"Save", "Keep for next time", "Stay"};
    int answer =
        JOptionPane.showOptionDialog(
            panel,
            unsaved.size() == 1
                ? "“" + unsaved.get(0).title() + "” is not saved."
                : unsaved.size() + " pages are not saved.",
            "Text not saved",
            JOptionPane.DEFAULT_OPTION,
            JOptionPane.PLAIN_MESSAGE,
            null,
            answers,
            answers[0]);
    if (answer == 0) {
      model.saving().saveAll(unsaved, then);
      return false;
    }
    if (answer == 1) {
      model.keepAll();
    }
    return answer == 1;
  }
}
