package limberboard.desktop.read;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;
import limberboard.desktop.base.Forgetful;
import limberboard.desktop.base.Memory;
import limberboard.desktop.base.Notices;
import limberboard.desktop.base.Session;
import limberboard.desktop.base.Settings;
import limberboard.desktop.pages.PagesModel;
import limberboard.desktop.support.SmallPrinter;
import limberboard.desktop.support.SmallWorkspace;
import limberboard.desktop.support.Steps;
import limberboard.library.file.WorkspaceFolders;
import limberboard.print.picture.Pictures;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** How often pages are rendered and laid out; each is a step of work. */
class CutReaderTest {
  @TempDir Path folder;
  private final Steps steps = new Steps();
  private final Session session = new Session(SmallWorkspace.clock(), Optional.of("knot"));
  private final Settings settings = new Settings(new Memory(new Forgetful()));
  private final PagesModel model = new PagesModel(session, new Memory(new Forgetful()));
  private WorkspaceFolders folders;
  private CutReader reader;

  @BeforeEach
  void open() {
    folders = SmallWorkspace.copyTo(folder);
    PageRenderer renderer = new PageRenderer(Pictures.in(folders));
    Papers papers =
        new Papers(
            renderer,
            steps.background(),
            new Notices(),
            new Outlets(name -> Optional.empty(), new SmallPrinter(), file -> {}));
    session.replace(SmallWorkspace.read(folders));
    reader = new CutReader(session, settings, renderer, steps.background(), papers, id -> {});
    reader.pane().setSize(700, 400);
    model.onChange(() -> model.page().ifPresent(page -> reader.show(page.id())));
  }

  /** Does everything that waits, and says how much it was. */
  private int done() {
    int count = 0;
    while (steps.waiting() > 0) {
      steps.next();
      count++;
    }
    return count;
  }

  @Test
  void aPageIsRenderedAndLaidOutOnceAndNotOnTheCallersThread() {
    model.open("replace-gasket");
    assertThat(reader.pane().region().getAccessibleContext().getAccessibleName()).isEqualTo("Page");
    assertThat(done()).as("one rendering, one layout").isEqualTo(2);
    assertThat(reader.pane().region().getAccessibleContext().getAccessibleName())
        .isEqualTo("Replace the locker gasket");
  }

  @Test
  void lettersInTheFilterRenderNothing() {
    model.open("replace-gasket");
    done();
    for (String letters : new String[] {"g", "ga", "gas", "gask"}) {
      model.filter(letters);
    }
    assertThat(done()).isZero();
  }

  @Test
  void anotherBoatRendersOnce() {
    model.open("replace-gasket");
    done();
    session.choose(Optional.of("stint"));
    assertThat(done()).isEqualTo(2);
  }

  @Test
  void whatIsEqualIsNotLaidOutAnew() throws IOException {
    model.open("torch");
    done();
    Path other = folders.articles().resolve("procedures/tighten-hose.md");
    Files.writeString(other, Files.readString(other) + "\nMore words.\n");
    session.replace(SmallWorkspace.read(folders));
    assertThat(done()).as("rendered, and found to be the same").isEqualTo(1);
    Path own = folders.articles().resolve("materials/torch.md");
    Files.writeString(own, Files.readString(own) + "\nMore words.\n");
    session.replace(SmallWorkspace.read(folders));
    assertThat(done()).isEqualTo(2);
  }

  @Test
  void aPageAskedForWhileAnotherIsOnItsWayIsTheOneThatIsShown() {
    reader.show("torch");
    reader.show("replace-gasket");
    done();
    assertThat(reader.pane().region().getAccessibleContext().getAccessibleName())
        .isEqualTo("Replace the locker gasket");
    reader.show("torch", 0);
    reader.show("replace-gasket", 0);
    done();
    assertThat(reader.pane().region().getAccessibleContext().getAccessibleName())
        .isEqualTo("Replace the locker gasket");
  }
}
