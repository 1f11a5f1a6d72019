package limberboard.desktop.read;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.EnumMap;
import java.util.Map;
import java.util.Optional;
import limberboard.boat.Fitting;
import limberboard.boat.Workspace;
import limberboard.desktop.look.Palette;
import limberboard.desktop.support.SmallWorkspace;
import limberboard.library.file.WorkspaceFolders;
import limberboard.print.picture.Pictures;

/** Pages of the small workspace, rendered and laid out for tests. */
final class LaidPages {
  /** A page with headings, lists in lists, a table and links. */
  static final String ALL_SORTS =
      """
      ---
      title: All sorts
      ---
      Read [about the hose](../procedures/tighten-hose.md) first, and then *all* of
      the **rest**, which goes on for longer than one line of the column so that it is
      broken somewhere.

      ## Steps

      1. Look at the hose.
      2. Turn the nut:
         - by hand
         - then by half a turn
      3. Look again.

      ## Sizes

      | Hose | Clip |
      | --- | --- |
      | 19 mm | small |
      | 25 mm | large |
      """;

  private final WorkspaceFolders folders;

  LaidPages(Path folder) {
    folders = SmallWorkspace.copyTo(folder);
  }

  /** Adds a page to the library. */
  LaidPages with(String path, String text) {
    try {
      Files.writeString(folders.articles().resolve(path), text);
      return this;
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  /** A page for the boat Knot. */
  Rendered rendered(String page) {
    Workspace workspace = SmallWorkspace.read(folders);
    Fitting knot = new Fitting(workspace.boat("knot").orElseThrow(), SmallWorkspace.TODAY);
    Map<Palette, String> colours = new EnumMap<>(Palette.class);
    for (Palette colour : Palette.values()) {
      colours.put(colour, "#123456");
    }
    try {
      return new PageRenderer(Pictures.in(folders))
          .screen(
              new PageRenderer.Order(
                  workspace.library(),
                  workspace.library().page(page).orElseThrow(),
                  Optional.of(knot),
                  false),
              false,
              new ScreenStyle(colours, 100));
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  /** The same laid out at a width. */
  Laid laid(String page, int width) {
    return PageLayout.of(rendered(page), width);
  }
}
