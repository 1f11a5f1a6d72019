package limberboard.desktop;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.Optional;
import limberboard.library.NewWorkspace;
import limberboard.library.file.WorkspaceFolders;
import limberboard.notes.NoteFolder;

/**
 * A few invented notes in a folder of their own, which is taken away when the program ends: for
 * pictures, which show nobody's real notes.
 */
final class SampleNotes {
  private SampleNotes() {}

  /** A workspace with nothing but notes, the newest caught the day before. */
  static WorkspaceFolders made(LocalDate today) {
    try {
      Path folder = Files.createTempDirectory("limberboard-notes");
      Runtime.getRuntime().addShutdownHook(new Thread(() -> SampleHistory.delete(folder)));
      WorkspaceFolders folders = NewWorkspace.in(folder.resolve("yard"));
      NoteFolder notes = new NoteFolder(folders);
      notes.add(
          today.minusDays(6).atTime(16, 40),
          Optional.of("rebed-deck-fitting"),
          Optional.of("dunlin"),
          Optional.empty(),
          "On the telephone: how long must the sealant stand before she sails? The page says so in"
              + " a step near its end. Say it at the top as well.");
      notes.add(
          today.minusDays(3).atTime(11, 30),
          Optional.of("water-in-forward-cabin"),
          Optional.empty(),
          Optional.empty(),
          "Two owners this week took the condensation under the berth for a leak. Ask first what"
              + " the night was like?");
      notes.add(
          today.minusDays(1).atTime(9, 5),
          Optional.empty(),
          Optional.of("whimbrel"),
          Optional.empty(),
          "The drain of her motor well clogs with weed every summer, her owner says. No page has"
              + " that yet.");
      return folders;
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}
