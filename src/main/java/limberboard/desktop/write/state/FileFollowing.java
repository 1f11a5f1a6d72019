package limberboard.desktop.write.state;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import limberboard.desktop.base.Notices;
import limberboard.writing.PageText;
import limberboard.writing.save.PageFile;

/**
 * Looks after each reading of the library whether the files of open pages have changed: a page of
 * which nothing is unsaved follows its file; of another both versions are kept.
 */
final class FileFollowing {
  private final WriteModel model;
  private final Notices notices;
  private final WriteOutside outside;

  FileFollowing(WriteModel model, Notices notices, WriteOutside outside) {
    this.model = model;
    this.notices = notices;
    this.outside = outside;
  }

  /** Looks at the files of all open pages. */
  void look() {
    List<String> paths = model.pages().stream().map(OpenPage::path).toList();
    if (!paths.isEmpty()) {
      outside.library().run("Looking at the files", () -> held(paths), this::compare);
    }
  }

  private Map<String, Optional<PageText>> held(List<String> paths) {
    Map<String, Optional<PageText>> held = new HashMap<>();
    for (String path : paths) {
      if (new PageFile(outside.folders(), path).open() instanceof PageFile.Ready ready) {
        held.put(path, ready.page());
      }
    }
    return held;
  }

  private void compare(Map<String, Optional<PageText>> held) {
    for (OpenPage page : model.pages()) {
      Optional<PageText> file = held.getOrDefault(page.path(), page.saved());
      if (!file.equals(page.saved()) && !model.saving().isBusy(page)) {
        changed(page, file);
      }
    }
  }

  private void changed(OpenPage page, Optional<PageText> file) {
    if (!page.isChanged() && file.isPresent()) {
      page.saved(file);
      model.restore(page, file.get());
    } else if (file.equals(Optional.of(page.text()))) {
      page.saved(file);
    } else {
      model
          .versions()
          .compare(
              page,
              file,
              () ->
                  notices.warn(
                      "Somebody else has changed the file of “"
                          + page.title()
                          + "”, of which there is text here that is not saved. F7 shows both."));
    }
  }
}
