package limberboard.desktop.write.state;

import java.util.Arrays;
import java.util.Optional;
import limberboard.library.page.Kind;

/** The kind of a page by where its file lies. */
final class Kinds {
  private Kinds() {}

  static Optional<Kind> of(String path) {
    return Arrays.stream(Kind.values())
        .filter(kind -> path.startsWith("articles/" + kind.folder() + "/") && path.endsWith(".md"))
        .findFirst();
  }
}
