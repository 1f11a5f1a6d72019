package limberboard.desktop.pages;

import java.awt.BorderLayout;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import javax.swing.Icon;
import javax.swing.JComponent;
import javax.swing.JPanel;
import limberboard.desktop.base.Latest;
import limberboard.desktop.base.Navigator;
import limberboard.desktop.base.Place;
import limberboard.desktop.look.LineIcon;
import limberboard.desktop.parts.Divider;
import limberboard.desktop.parts.Keys;
import limberboard.desktop.parts.Sides;
import limberboard.desktop.read.PageAction;
import limberboard.desktop.read.PlaceTools;
import limberboard.desktop.tree.TreePapers;
import limberboard.desktop.upkeep.WorkNotes;
import limberboard.library.file.WorkspaceFolders;
import limberboard.library.page.Page;

/** The place where the library is read. */
public final class PagesPlace implements Place {
  private static final int ICON = 26;
  private static final int LEAST_WIDTH = 700;
  private static final int LEAST_WHOLE = 640;
  private final JPanel panel = new JPanel(new BorderLayout());
  private final ContentsPanel contents;
  private final ReadingPanel reading;
  private final BoatPanel beside;
  private final PagesModel model;
  private final Sides whole;
  private Optional<String> opened = Optional.empty();

  /**
   * The place.
   *
   * @param tools what places are made with
   * @param model what is shown
   * @param folders where the files of problems lie
   * @param notes tells when the work of a page is due
   */
  public PagesPlace(PlaceTools tools, PagesModel model, WorkspaceFolders folders, WorkNotes notes) {
    Navigator navigator = tools.navigator();
    Divider.Memory dividers = tools.dividers();
    this.model = model;
    contents = new ContentsPanel(model, this::read);
    reading =
        new ReadingPanel(
            model,
            tools.reader(model::open).withFoot(),
            new ProblemsPanel(model, folders, new Latest(tools.background()), dividers),
            () -> model.page().ifPresent(page -> navigator.trace(page.id())),
            new TreePapers(tools.session(), tools.papers()));
    reading.offer(
        new PageAction(
            "History of the page",
            "control H",
            () -> model.page().ifPresent(page -> navigator.history(page.id()))));
    reading.offer(
        new PageAction(
            "Read in full …",
            "control shift R",
            () -> model.page().ifPresent(page -> navigator.readInFull(page.id()))));
    beside = new BoatPanel(model, notes, navigator);
    Sides right =
        new Sides(LEAST_WIDTH, "Page", reading, "The boat", beside, "pages-around", 0.74, dividers);
    model.onChange(right::showMain);
    whole =
        new Sides(
            LEAST_WHOLE, "Contents", contents, "Reading", right, "pages-contents", 0.26, dividers);
    whole.onFold(this::showRead);
    model.onChange(this::follow);
    panel.add(whole);
    Keys.within(panel, "F4", reading::write);
  }

  /** What is opened comes to the front; filtering the contents leaves them there. */
  private void follow() {
    Optional<String> now =
        model.problemsShown() ? Optional.of("") : model.page().map(page -> page.id());
    if (!now.equals(opened)) {
      opened = now;
      showRead();
    }
  }

  private void showRead() {
    if (opened.isPresent()) {
      whole.showOther();
    }
  }

  @Override
  public Name name() {
    return new Name("pages", "Pages", 'P');
  }

  @Override
  public Icon icon() {
    return LineIcon.pages(ICON);
  }

  @Override
  public JComponent component() {
    return panel;
  }

  private void read() {
    if (reading.isPageShown()) {
      whole.showOther();
      reading.region().requestFocusInWindow();
    }
  }

  /** In the page, when there is one to be read. */
  @Override
  public JComponent begin() {
    return reading.isPageShown() ? reading.region() : contents.regions().get(0);
  }

  @Override
  public Optional<String> subject() {
    return model.page().map(Page::title);
  }

  @Override
  public Optional<Runnable> print() {
    return reading.print();
  }

  @Override
  public Optional<Find> find() {
    return reading.find();
  }

  @Override
  public List<JComponent> regions() {
    List<JComponent> regions = new ArrayList<>(contents.regions());
    regions.add(reading.region());
    regions.add(beside.region());
    return regions;
  }
}
