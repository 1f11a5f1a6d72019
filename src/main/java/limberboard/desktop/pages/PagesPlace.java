package limberboard.desktop.pages;

import java.awt.BorderLayout;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Consumer;
import javax.swing.Icon;
import javax.swing.JComponent;
import javax.swing.JPanel;
import limberboard.desktop.base.Latest;
import limberboard.desktop.base.Place;
import limberboard.desktop.look.LineIcon;
import limberboard.desktop.parts.Divider;
import limberboard.desktop.parts.Keys;
import limberboard.desktop.parts.Sides;
import limberboard.desktop.read.CutReader;
import limberboard.library.WorkspaceFolders;

/** The place where the library is read. */
public final class PagesPlace implements Place {
  private static final int ICON = 26;
  private static final int LEAST_WIDTH = 700;
  private final JPanel panel = new JPanel(new BorderLayout());
  private final ContentsPanel contents;
  private final ReadingPanel reading;
  private final AroundPanel around;

  /**
   * The place.
   *
   * @param model what is shown
   * @param reader shows pages
   * @param folders where the files of problems lie
   * @param files reads files
   * @param trace starts tracing the symptom that is read
   * @param dividers remembers dividers
   */
  public PagesPlace(
      PagesModel model,
      CutReader reader,
      WorkspaceFolders folders,
      Latest files,
      Consumer<String> trace,
      Divider.Memory dividers) {
    contents = new ContentsPanel(model);
    reading =
        new ReadingPanel(
            model,
            reader,
            new ProblemsPanel(model, folders, files, dividers),
            () -> model.page().ifPresent(page -> trace.accept(page.id())));
    around = new AroundPanel(model, model::open);
    Sides right =
        new Sides(
            LEAST_WIDTH,
            "Page",
            reading,
            "Around this page",
            around,
            "pages-around",
            0.74,
            dividers);
    model.onChange(right::showMain);
    Keys.within(panel, "alt LEFT", model::back);
    Keys.within(panel, "alt RIGHT", model::forward);
    panel.add(Divider.beside("pages-contents", contents, right, 0.26, dividers));
  }

  @Override
  public String id() {
    return "pages";
  }

  @Override
  public String title() {
    return "Pages";
  }

  @Override
  public char mnemonic() {
    return 'P';
  }

  @Override
  public Icon icon() {
    return LineIcon.pages(ICON);
  }

  @Override
  public JComponent component() {
    return panel;
  }

  @Override
  public List<JComponent> regions() {
    List<JComponent> regions = new ArrayList<>(contents.regions());
    regions.add(reading.region());
    regions.add(around.region());
    return regions;
  }
}
