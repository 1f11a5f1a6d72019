package limberboard.desktop.write.state;

import java.util.Optional;
import java.util.function.Consumer;
import limberboard.desktop.base.Notices;
import limberboard.library.page.Kind;
import limberboard.library.page.Page;
import limberboard.writing.PageText;
import limberboard.writing.PageText.Stretch;
import limberboard.writing.save.KeptText;
import limberboard.writing.save.KeptTexts;
import limberboard.writing.save.PageFile;

/** Opens the files of pages, and texts that were left. For the event thread only. */
final class PageOpening {
  private final WriteModel model;
  private final Notices notices;
  private final WriteOutside outside;

  PageOpening(WriteModel model, Notices notices, WriteOutside outside) {
    this.model = model;
    this.notices = notices;
    this.outside = outside;
  }

  void open(String id, Optional<String> heading) {
    Optional<OpenPage> known =
        model.pages().stream().filter(page -> page.id().equals(id)).findFirst();
    if (known.isPresent()) {
      model.show(known.get());
      heading.ifPresent(words -> toHeading(known.get(), words));
      return;
    }
    model.page(id).ifPresent(page -> open(page, heading));
  }

  private void open(Page<?> page, Optional<String> heading) {
    read(
        page.path(),
        file -> {
          OpenPage opened = opened(page.path(), page.kind(), file);
          heading.ifPresent(words -> toHeading(opened, words));
          model.show(opened);
        });
  }

  void openLine(String path, Kind kind, int line) {
    Optional<OpenPage> known =
        model.pages().stream().filter(page -> page.path().equals(path)).findFirst();
    if (known.isPresent()) {
      model.show(known.get());
      toLine(known.get(), line);
      return;
    }
    read(
        path,
        file -> {
          OpenPage page = opened(path, kind, file);
          toLine(page, line);
          model.show(page);
        });
  }

  private static void toLine(OpenPage page, int line) {
    Stretch at = page.text().line(line);
    page.goTo(at.from(), at.from());
  }

  void openFile(String path, Kind kind) {
    read(path, file -> model.show(opened(path, kind, file)));
  }

  /** The page that is open of a file, or one that is opened now. */
  private OpenPage opened(String path, Kind kind, Optional<PageText> file) {
    return model.pages().stream()
        .filter(page -> page.path().equals(path))
        .findFirst()
        .orElseGet(() -> model.added(new OpenPage(path, kind, file, file.orElse(PageText.NONE))));
  }

  private static void toHeading(OpenPage page, String words) {
    int at = Headings.find(page.text(), words);
    page.goTo(at, at);
  }

  private void read(String path, Consumer<Optional<PageText>> taken) {
    outside
        .library()
        .run(
            "Opening the page",
            () -> {
              outside.guard().begins("opening a page");
              return new PageFile(outside.folders(), path).open();
            },
            opened -> {
              if (opened instanceof PageFile.Ready ready) {
                taken.accept(ready.page());
              } else {
                notices.warn(Troubles.of(((PageFile.Unreadable) opened).problem()));
              }
            });
  }

  void restore(KeptTexts.Offered offered) {
    KeptText kept = offered.kept();
    Optional<Kind> kind = Kinds.of(kept.path());
    if (kind.isEmpty()) {
      notices.warn(kept.path() + " is no page's file any more. The text stays where it is kept.");
      return;
    }
    read(
        kept.path(),
        file -> {
          OpenPage page = opened(kept.path(), kind.get(), file);
          model.show(page);
          model.restore(page, kept.text());
          model.keeping().flush();
          model.keeping().drop(offered);
          if (!kept.goesOnFrom(file)) {
            model.versions().show(page, file);
          }
        });
  }
}
