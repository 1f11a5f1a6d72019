package limberboard.desktop.base;

import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;

/** The workspaces opened lately, the last one first. For the event thread only. */
public final class Recent {
  private static final int MOST = 8;
  private static final String KEY = "workspace-";
  private final KeptValues kept;

  /** Those kept here. */
  public Recent(KeptValues kept) {
    this.kept = kept;
  }

  /** The workspaces' folders; whether they are still there is not asked. */
  public List<Path> all() {
    Set<Path> all = new LinkedHashSet<>();
    for (int i = 1; i <= MOST; i++) {
      String text = kept.get(KEY + i);
      try {
        if (!text.isBlank() && Path.of(text).isAbsolute()) {
          all.add(Path.of(text));
        }
      } catch (InvalidPathException e) {
        // a damaged line counts as not there
      }
    }
    return List.copyOf(all);
  }

  /** Puts a workspace first. */
  public void opened(Path root) {
    List<Path> all = new ArrayList<>(all());
    all.remove(root);
    all.add(0, root);
    for (int i = 1; i <= MOST; i++) {
      kept.put(KEY + i, i <= all.size() ? all.get(i - 1).toString() : "");
    }
  }
}
