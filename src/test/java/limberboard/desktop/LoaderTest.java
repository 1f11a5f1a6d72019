package limberboard.desktop;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.atomic.AtomicInteger;
import limberboard.desktop.base.Session;
import limberboard.desktop.find.SearchModel;
import limberboard.desktop.support.SmallWorkspace;
import limberboard.desktop.support.Steps;
import limberboard.library.Library;
import limberboard.library.LibraryReader;
import limberboard.library.file.WorkspaceFolders;
import limberboard.library.page.Details;
import limberboard.library.page.Page;
import limberboard.search.SearchResults;
import org.junit.jupiter.api.Test;

class LoaderTest {
  private final Steps steps = new Steps();
  private final Session session = new Session(SmallWorkspace.clock(), Optional.of("knot"));
  private final AtomicInteger readings = new AtomicInteger();
  private final List<Library> indexed = new ArrayList<>();
  private final Loader loader =
      new Loader(
          WindowServices.Reader.of(
              () -> {
                readings.incrementAndGet();
                return SmallWorkspace.read();
              },
              (path, kind) -> new LibraryReader(folders()).typing(path, kind)),
          library -> {
            indexed.add(library);
            return query -> SearchResults.none();
          },
          steps.background(),
          steps.background(),
          session,
          new SearchModel(session, steps.background(), Runnable::run));

  private static WorkspaceFolders folders() {
    return new WorkspaceFolders(Path.of(""));
  }

  @Test
  void askedSeveralTimesBeforeItBeginsItReadsOnce() {
    loader.load();
    loader.load();
    loader.load();
    steps.all();
    assertThat(readings).hasValue(1);
    assertThat(session.isRead()).isTrue();
    loader.load();
    steps.all();
    assertThat(readings).hasValue(2);
  }

  @Test
  void readingTheSameAgainTellsNobody() {
    loader.load();
    steps.all();
    AtomicInteger told = new AtomicInteger();
    session.onChange(told::incrementAndGet);
    var before = session.workspace();
    loader.load();
    steps.all();
    assertThat(readings).hasValue(2);
    assertThat(told).hasValue(0);
    assertThat(session.workspace()).isSameAs(before);
  }

  @Test
  void aSavedPageIsSearchedBeforeTheWorkspaceHasBeenReadAgain() {
    loader.load();
    steps.all();
    indexed.clear();
    Page<?> old = session.library().pages().iterator().next();
    Page<?> now = changed(old);
    loader.saved(now, List.of());
    steps.all();
    assertThat(readings).hasValue(1);
    assertThat(indexed).hasSize(1);
    assertThat(indexed.get(0).page(old.id())).containsSame(now);
    assertThat(session.library().page(old.id())).containsSame(old);
  }

  private static <D extends Details> Page<D> changed(Page<D> page) {
    return new Page<>(
        page.id(), page.path(), page.head(), page.details(), "Other words.", page.bodyLine());
  }
}
